import { z } from 'zod'
import { barMarks } from '#model/bar-marks.ts'
import { atIsoSchema, idSchema } from '#model/change.ts'
import { checkMethods } from '#model/check-methods.ts'
import { readWithSchema } from '#model/read-with.ts'

const heightMm = z.number().positive().max(1e6)

/** One reading: the text as typed, and the height it stands for: of the place on the bar, or for `turn-over` of the face above the plate. */
export const readingSchema = z.strictObject({
  bar: idSchema,
  /** Counted from the marked end, from 0. */
  station: z.number().int().min(0).max(999),
  /** Distance of the station from the marked end; null where nobody said. */
  xMm: z.number().min(0).max(1e6).nullable(),
  /** The first or the second line along the bar. Repeats share bar, station, line and face and follow each other. */
  line: z.union([z.literal(0), z.literal(1)]).default(0),
  /** Which face was up; B is the one the mark is not read from. */
  face: z.enum(['A', 'B']).default('A'),
  text: z.string().max(40),
  heightMm,
})
export type Reading = z.infer<typeof readingSchema>

/** What the indicator was zeroed on, and the height that stands for. */
export const zeroSchema = z.discriminatedUnion('on', [
  z.strictObject({ on: z.literal('block'), heightMm, text: z.string().max(40) }),
  /** A bar's own place: its height is as it was taken to be before. */
  z.strictObject({ on: z.literal('bar'), bar: idSchema, station: z.number().int().min(0).max(999), heightMm, text: z.string().max(40) }),
])
export type Zero = z.infer<typeof zeroSchema>

/** One thing used in a check, by its record if it has one, and when it was due. */
const toolSchema = z.strictObject({ id: idSchema.nullable(), name: z.string().max(80), dueOn: z.string().max(10).nullable() })
export type CheckTool = z.infer<typeof toolSchema>

/** Instrument, plate and blocks as they were that day: a record edited later does not change what was proved. */
export const tookSchema = z.strictObject({ instrument: toolSchema.nullable(), plate: toolSchema.nullable(), blocks: toolSchema.nullable(), readWith: readWithSchema })
export type Took = z.infer<typeof tookSchema>

/** A look at one bar, apart from its heights. */
export const lookSchema = z.strictObject({
  bar: idSchema,
  wiped: z.boolean(),
  stoned: z.boolean(),
  rock: z.enum(['none', 'rocks', 'not tried']),
  /** The feeler that just goes under, as typed, and its thickness; where it went under. */
  feelerText: z.string().max(40),
  feelerUm: z.number().min(0).max(1e5).nullable(),
  seen: z.array(z.enum(barMarks)).max(8),
})
export type Look = z.infer<typeof lookSchema>

/** What the indicator showed on the zero again at the end. */
const closingSchema = z.strictObject({ text: z.string().max(40), um: z.number().min(-1e5).max(1e5) })

/**
 * One visit of some bars to the plate or micrometer. A correction is a new check that names the one it replaces.
 *
 * What has a default was not asked by earlier programs, whose checks still arrive.
 */
export const checkSchema = z.strictObject({
  id: idSchema,
  method: z.enum(checkMethods),
  replaces: idSchema.nullable(),
  readings: z.array(readingSchema).max(5000),
  zero: zeroSchema.nullable().default(null),
  closing: closingSchema.nullable().default(null),
  /** °C at the plate, as typed and as a number. */
  temperature: z.strictObject({ text: z.string().max(40), c: z.number().min(-50).max(100) }).nullable().default(null),
  took: tookSchema.nullable().default(null),
  looks: z.array(lookSchema).max(500).default([]),
  /** Kept as the bars were found, before anything was done to them. */
  asFound: z.boolean().default(false),
  note: z.string().max(2000),
  person: z.string().max(8),
  device: idSchema,
  atIso: atIsoSchema,
}).refine((check) => check.readings.length > 0 || check.looks.length > 0, { path: ['readings'] })
export type Check = z.infer<typeof checkSchema>
