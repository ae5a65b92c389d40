import type { Units } from '#model/shop-record.ts'
import { wordLength } from '#model/length.ts'
import { checkText } from '#cli/check-text.ts'
import { inColumns, plainText } from '#cli/columns.ts'
import type { JsonOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { withShop } from '#cli/with-shop.ts'
import { checkOfShop } from '#tasks/inspect/check-of-shop.ts'
import { type CheckLine, listChecks } from '#tasks/inspect/list-checks.ts'

export type ShowOptions = JsonOptions & { readonly all?: true }

export async function inspectShowCommand(id: string | undefined, { data, json, all }: ShowOptions, out: Out): Promise<void> {
  await withShop(data, async (store, { units }) => {
    if (id !== undefined) {
      const found = await checkOfShop(store, id)
      out.answer(json ? `${JSON.stringify(found)}\n` : checkText(found, units, out.columns))
      return
    }
    const lines = await listChecks(store, { told: all === true })
    out.answer(json ? `${JSON.stringify(lines)}\n` : linesSaid(lines, units))
    if (!json) out.say(lines.length === 0 ? 'No checks yet. Record one with "twinrest inspect record".\n' : `${lines.length} ${lines.length === 1 ? 'check' : 'checks'}, latest first, heights in ${units.length}\n`)
  })
}

function linesSaid(lines: readonly CheckLine[], units: Units): string {
  if (lines.length === 0) return ''
  const heights = ({ lowestMm, highestMm }: CheckLine): string => (lowestMm === null || highestMm === null ? '–' : [...new Set([lowestMm, highestMm].map((mm) => wordLength(mm, units, { fractions: false })))].join(' – '))
  return inColumns([
    ['made', 'method', 'bars', 'heights', 'by', 'check'],
    ...lines.map((line) => [line.atIso.slice(0, 10), line.method, `${line.bars}`, heights(line), plainText(line.person), `${line.id}${line.replaced ? ' (replaced)' : ''}`]),
  ], [2])
}
