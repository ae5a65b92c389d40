/**
 * JSON in which equal values are equal texts: keys in the order of their code units. A device that compares what it has with what came back from the shop
 * needs it, too: the shop answers with its keys in this order.
 *
 * @param value  what JSON holds
 */
export function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map((one) => canonical(one)).join(',')}]`
  if (value === null || typeof value !== 'object') return JSON.stringify(value)
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1))
  return `{${entries.map(([key, one]) => `${JSON.stringify(key)}:${canonical(one)}`).join(',')}}`
}
