import type { SteelGroup, SteelState } from '#model/cutting-data.ts'

type Row = readonly [steel: string, state: SteelState, forceGroup: string, dataGroup?: string]

const rows: readonly Row[] = [
  ['S235JRC+C', 'soft', '1'], ['11SMn30', 'soft', '1'], ['C45', 'soft', '2'], ['C45U', 'soft', '2'], ['42CrMo4', 'soft', '6'],
  // under 5 % of alloy
  ['1.2842', 'soft', '6'], ['1.2510', 'soft', '6'], ['1.2379', 'soft', '10'],
  ['1.2312', 'prehardened', '8'], ['1.2738', 'prehardened', '8'], ['prehardened 44 HRC', 'prehardened', '11', '44 HRC'],
  ['1.2842', 'hardened', '39'], ['1.2510', 'hardened', '39'], ['1.2379', 'hardened', '39'],
]

/** Which group a steel goes into is a reading of the names of the groups. @source CUTTING-FORCE */
export const steelGroups: readonly SteelGroup[] = rows.map(([steel, state, forceGroup, dataGroup = forceGroup]) => ({ steel, state, forceGroup, dataGroup, source: 'CUTTING-FORCE', standing: 'computed' }))
