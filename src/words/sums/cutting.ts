import type { SumWords } from '#words/say-sum.ts'

/** The sums of milling along an edge, of the finishing pass. */
export const cuttingSums: { readonly [formula: string]: SumWords } = {
  'cutting-speed': { title: 'Cutting speed, in m/min', says: 'π × {diameterMm} × {rpm} / 1000' },
  'table-feed': { title: 'Feed of the table, in mm/min', says: '{rpm} × {teeth} × {feedPerToothMm}' },
  'chip-largest': { title: 'Thickest chip', says: '2 × {feedPerToothMm} × √(a × (1 − a)), where a is {takenMm} / {diameterMm}, at most a half' },
  'removal-rate': { title: 'Removal, in cm³/min', says: '{depthMm} × {takenMm} × {feedMmPerMin} / 1000' },
  'specific-force': { title: 'Specific cutting force, in N/mm²', says: '{kc11MPa} × {meanChipMm}^−{mc}' },
  'cutter-power': { title: 'Power at the cutter, in kW', says: '{removalCm3PerMin} × {kcMPa} / 60 000' },
  'motor-power': { title: 'Power of the motor, in kW', says: '{cutterKw} / {efficiency}' },
  'tooth-force': { title: 'Force at a tooth, in N', says: '{kc11MPa} × {depthMm} × {chipMm} × h^−{mc}, where h is {chipMm}, at least {thinnestMm}' },
  'cutter-deflection': { title: 'Bending of the cutter at its tip', says: '{bendingN} × {overhangMm}³ / (3 × {eMPa} × π × (0.8 × {diameterMm})⁴ / 64)' },
}
