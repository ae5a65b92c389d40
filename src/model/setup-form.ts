import { z } from 'zod'
import { tools } from '#model/cut.ts'
import { shapes, sides } from '#model/part.ts'
import { uses } from '#model/wishes.ts'

const typed = z.string().max(40)
const rectForm = z.strictObject({ x0: typed, x1: typed, y0: typed, y1: typed })

const holeForm = z.strictObject({
  kind: z.literal('hole'),
  tool: z.enum(tools),
  diameter: typed,
  /** Distance of the centre from the named jaw. */
  across: typed,
  from: z.enum(['fixed', 'moving']),
  /** Distance from the part's left end; empty where it was not said. */
  along: typed,
  through: z.boolean(),
  depth: typed,
  runThrough: typed,
  pointAngle: typed,
  pitch: typed,
  leadThreads: typed,
})
const milledForm = z.strictObject({
  kind: z.enum(['step', 'slot']),
  depth: typed,
  overJaw: z.boolean(),
  runThrough: typed,
  /** Its place in the plan; null where it was not said. */
  rect: rectForm.nullable(),
})
const endForm = z.strictObject({ kind: z.literal('end'), side: z.enum(['left', 'right']), stock: typed })

/** What cuts and clamping are reckoned with as far as it belongs to the part and its cuts: vise, cutter and drill stay with the device they are beside. */
const holdForm = z.strictObject({
  /** Group of the steel, for the force of milling. */
  group: typed,
  /** Factor of its material, for the force of drilling. */
  kd: typed,
  yieldMPa: typed,
  /** Width of the milled cut. */
  width: typed,
  /** Another drill than the largest of the holes. */
  drill: typed,
})
export type HoldForm = z.infer<typeof holdForm>

/** One line of *cuts* on the form: every number as it was typed, an empty text where nothing was. */
export const cutFormSchema = z.discriminatedUnion('kind', [holeForm, milledForm, endForm])
export type CutForm = z.infer<typeof cutFormSchema>
export type HoleForm = z.infer<typeof holeForm>
export type MilledForm = z.infer<typeof milledForm>
export type EndForm = z.infer<typeof endForm>

/** The Set up screen as typed: texts in the units named, so that a saved setup opens as it was left. */
export const setupFormSchema = z.strictObject({
  unit: z.enum(['mm', 'in']),
  shape: z.enum(shapes),
  height: typed,
  /** What a face cut takes off the top; empty or 0: nothing. */
  offTop: typed,
  /** Or: the finished top must stand this much proud of the jaws; empty: no such wish. */
  proud: typed,
  between: typed,
  along: typed,
  cuts: z.array(cutFormSchema).max(200),
  hollows: z.array(rectForm).max(50),
  use: z.enum(uses),
  /** The side of the part at the fixed jaw; left out, as earlier programs do: unknown. */
  side: z.enum(sides).exactOptional(),
  /** Left out, as earlier programs do: nothing of it was said. */
  hold: holdForm.exactOptional(),
  /** Empty: the shop's default; `auto` for the grip is the default. */
  wishes: z.strictObject({ grip: typed, air: typed, holeAir: typed, bedAir: typed, gap: typed, tolerance: typed }),
})
export type SetupForm = z.infer<typeof setupFormSchema>
