import { readLengthMm, readNumber, wordNumber } from '#model/length.ts'
import { plainText } from '#cli/columns.ts'
import type { JsonOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { withShop } from '#cli/with-shop.ts'
import { wrapped } from '#cli/wrapped.ts'
import { matesOfShop } from '#tasks/inspect/mates-of-shop.ts'
import { sayFinding } from '#words/say-finding.ts'

export type MatesOptions = JsonOptions & { readonly within?: string; readonly vises?: string; readonly bar?: readonly string[] }

export async function inspectMatesCommand({ data, within, vises, bar, json }: MatesOptions, out: Out): Promise<void> {
  await withShop(data, async (store, { units, limitsUm }) => {
    const wish = vises === undefined ? { want: 'pairs' as const, withinUm: within === undefined ? limitsUm.milling : readLengthMm(/^[\d.,]+$/.test(within) ? `${within} um` : within, 'mm', 'within') * 1000 }
      : { want: 'row' as const, vises: readNumber(vises, 'vises') }
    const found = await matesOfShop(store, { wish, ...(bar === undefined ? {} : { bars: bar }) })
    if (json) { out.answer(`${JSON.stringify(found)}\n`); return }
    const nameOf = (id: string): string => { const one = found.bars.find((known) => known.id === id); return one ? plainText(`${one.name} ${one.code}`.trim()) : id }
    const item = (text: string): string => wrapped(text, out.columns, '  - '), um = (value: number) => `${wordNumber(value, units.decimalMark, null, 1)} µm`
    out.answer([
      found.groups.length === 0 ? 'No pair keeps within that.\n' : '',
      ...found.groups.map(({ bars: [a, b], because, provedToUm }, at) => `${at + 1}  ${nameOf(a)} and ${nameOf(b)}${provedToUm === null ? '' : `, proved to ${um(provedToUm)}`}\n${because.map((one) => item(sayFinding(one, units, nameOf))).join('')}`),
      ...(found.row ? [`All of them within ${um(found.row.spreadUm)}${found.row.provedToUm === null ? '' : `, proved to ${um(found.row.provedToUm)}`}.\n`] : []),
      ...found.findings.map((one) => item(sayFinding(one, units, nameOf))),
    ].join(''))
    out.say(`${found.bars.length} measured ${found.bars.length === 1 ? 'bar' : 'bars'}, ${found.leftOver.length} left over\n`)
  })
}
