export const faces = ['smooth', 'diamond', 'serrated'] as const
export type Face = (typeof faces)[number]
export const surfaces = ['ground', 'machined', 'unmachined'] as const
export type Surface = (typeof surfaces)[number]
export const materials = ['steel', 'aluminium', 'brass', 'cast iron'] as const
export type Material = (typeof materials)[number]

/** Of a steel part at a jaw. @source JAW-FRICTION */
const clamping: { readonly [surface in Surface]: { readonly [face in Face]: number } } = {
  ground: { smooth: 0.07, diamond: 0.12, serrated: 0.2 },
  machined: { smooth: 0.1, diamond: 0.2, serrated: 0.35 },
  unmachined: { smooth: 0.15, diamond: 0.3, serrated: 0.45 },
}
/** @source JAW-FRICTION */
const correction: { readonly [material in Material]: number } = { 'steel': 1, 'aluminium': 0.95, 'brass': 0.9, 'cast iron': 0.8 }

/** Friction at one jaw. Wet, a smooth jaw counts as at a ground part. @source JAW-FRICTION HOLD-RULES */
export function frictionAt(face: Face, surface: Surface, material: Material, wet: boolean): number {
  return clamping[wet && face === 'smooth' ? 'ground' : surface][face] * correction[material]
}
