import fc from 'fast-check'

/** As much of JSON Schema as the interface is described with. */
export type Schema = {
  readonly type?: string
  readonly properties?: { readonly [key: string]: Schema }
  readonly required?: readonly string[]
  readonly items?: Schema
  readonly maxItems?: number
  readonly additionalProperties?: Schema | boolean
  readonly pattern?: string
  readonly format?: string
  readonly maxLength?: number
  readonly enum?: readonly unknown[]
  readonly const?: unknown
  readonly anyOf?: readonly Schema[]
  readonly oneOf?: readonly Schema[]
}

/** What breaks programs: the ends of number and text, what is special to a language, a database, a page, a path. */
const nasty = fc.constantFrom<unknown>(
  null, true, 0, -0, -1, 1e308, -1e308, 5e-324, 2 ** 53 + 1, '', 'NaN', '1e308', '-3', '7/8', '1,5', '__proto__', 'constructor', '../../etc/passwd', "';drop table bar;--",
  '\u0000', 'a\u0000b', '\u202e', '\ud800', '\udc00\ud800', '<script>x</script>', '💥'.repeat(30), 'x'.repeat(5000), [], {}, [null], [[[[[[]]]]]], JSON.parse('{"__proto__": {"x": 1}}'),
  '2026-13-45T99:00:00.000Z', JSON.parse(`${'['.repeat(3000)}${']'.repeat(3000)}`),
)

/** Data as a schema wants it, lists short. */
export function dataOf(schema: Schema): fc.Arbitrary<unknown> {
  const either = schema.anyOf ?? schema.oneOf
  if (either) return fc.oneof(...either.map(dataOf))
  if ('const' in schema) return fc.constant(schema.const)
  if (schema.enum) return fc.constantFrom(...schema.enum)
  if (schema.type === 'array') return fc.array(dataOf(schema.items ?? {}), { maxLength: Math.min(schema.maxItems ?? 3, 3) })
  if (schema.type === 'object') return recordOf(schema)
  if (schema.type === 'string') return textOf(schema)
  if (schema.type === 'boolean') return fc.boolean()
  if (schema.type === 'null') return fc.constant(null)
  if (schema.type === 'integer') return fc.integer()
  return schema.type === 'number' ? fc.double({ noNaN: true, noDefaultInfinity: true }) : fc.jsonValue({ maxDepth: 3 })
}

/** The same, with one thing somewhere in it replaced by something nasty. */
export function spoilt(data: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> {
  return fc.tuple(data, fc.nat(), nasty).map(([whole, where, instead]) => {
    const places = placesIn(whole)
    return at(whole, places[where % places.length]!, instead)
  })
}

function recordOf({ properties = {}, required = [], additionalProperties }: Schema): fc.Arbitrary<unknown> {
  if (typeof additionalProperties === 'object') return fc.dictionary(fc.stringMatching(/^[a-zA-Z]{1,8}$/), dataOf(additionalProperties), { maxKeys: 3 })
  return fc.record(Object.fromEntries(Object.entries(properties).map(([key, inside]) => [key, dataOf(inside)])), { requiredKeys: required as string[] })
}

function textOf({ pattern, format, maxLength = 60 }: Schema): fc.Arbitrary<string> {
  if (format === 'date-time') return fc.date({ min: new Date(0), max: new Date('2100-01-01'), noInvalidDate: true }).map((date) => date.toISOString())
  return pattern === undefined ? fc.string({ unit: 'binary', maxLength: Math.min(maxLength, 60) }) : fc.stringMatching(new RegExp(pattern))
}

type Place = readonly string[]

function placesIn(value: unknown, place: Place = []): Place[] {
  return typeof value === 'object' && value !== null ? [place, ...Object.entries(value).flatMap(([key, inside]) => placesIn(inside, [...place, key]))] : [place]
}

function at(value: unknown, [step, ...rest]: Place, instead: unknown): unknown {
  if (step === undefined) return instead
  if (Array.isArray(value)) return value.map((one, k) => (String(k) === step ? at(one, rest, instead) : one) as unknown)
  return { ...(value as object), [step]: at((value as { readonly [key: string]: unknown })[step], rest, instead) }
}
