import type { Cited } from '#model/cited.ts'

export const cutterMaterials = ['carbide', 'HSS'] as const
export type CutterMaterial = (typeof cutterMaterials)[number]

export const steelStates = ['soft', 'prehardened', 'hardened'] as const
export type SteelState = (typeof steelStates)[number]

/** Specific cutting force of a group of materials: kc = kc1.1 · h^−mc in N/mm², h in mm. `mc` null: not printed. */
export type SpecificForce = Cited & { readonly group: string; readonly what: string; readonly kc11MPa: number; readonly mc: number | null }

/** Material factor Kd of thrust and torque of a drill, in the SI form of its handbook. */
export type DrillFactor = Cited & { readonly what: string; readonly kd: number }

/** Starting values for an end mill in a group. The feed is mm per tooth, or that for each mm of diameter; `to` null: not printed. */
export type CutterData = Cited & {
  readonly group: string
  readonly material: CutterMaterial
  readonly fromMPerMin: number
  readonly toMPerMin: number
  readonly feed: { readonly per: 'tooth' | 'diameter'; readonly from: number; readonly to: number | null; readonly start: number }
  /** How much a finishing pass takes off a wall, least and most. */
  readonly finishMm: readonly [least: number, most: number]
}

/** Which group a steel counts to in a state: for its force, and for speeds and feeds. */
export type SteelGroup = Cited & { readonly steel: string; readonly state: SteelState; readonly forceGroup: string; readonly dataGroup: string }

/** What a surface grinder may take of a kind of work at the most; crossfeed as a share of the width of the wheel. */
export type GrindingRow = Cited & {
  readonly work: 'plain carbon' | 'alloy' | 'tool steel'
  readonly hardened: boolean
  readonly roughMostUm: number
  readonly finishMostUm: number
  readonly crossfeedShare: number
  readonly wheelMPerS: readonly [least: number, most: number]
  readonly tableMPerMin: readonly [least: number, most: number]
}
