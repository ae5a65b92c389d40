import { trusts, type Trust } from '#model/bar.ts'
import { readLengthMm, wordLength } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { ShopRecord, Units } from '#model/shop-record.ts'
import { inColumns, plainText } from '#cli/columns.ts'
import type { JsonOptions, UnitOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { withShop } from '#cli/with-shop.ts'
import { listRack, type RackFilter, type RackLine } from '#tasks/rack/list-rack.ts'
import { trustWords } from '#words/say-place.ts'
import { termsFor } from '#words/terms.ts'

export type ListOptions = JsonOptions & UnitOptions & {
  readonly height?: string; readonly thickness?: string; readonly length?: string; readonly find?: string; readonly trust?: string
  readonly gone?: true
}

export async function rackListCommand(options: ListOptions, out: Out): Promise<void> {
  await withShop(options.data, async (store, shop) => {
    const lines = await listRack(store, filterFrom(options, shop))
    out.answer(options.json ? `${JSON.stringify(lines)}\n` : linesSaid(lines, shop.units))
    if (!options.json) out.say(lines.length === 0 ? 'No bars here. Add some with "twinrest rack add" or "twinrest rack import".\n' : `${lines.length} ${lines.length === 1 ? 'bar' : 'bars'}, sizes in ${shop.units.length}; * measured here\n`)
  })
}

/** Bars as rows of a table, without a last line of counts. */
export function linesSaid(lines: readonly RackLine[], units: Units): string {
  if (lines.length === 0) return ''
  const size = (mm: number, measured: boolean) => `${wordLength(mm, units)}${measured ? '*' : ' '}`
  return inColumns([
    ['height ', 'thick ', 'length', 'name', 'mates', 'slot', 'state', 'code'],
    ...lines.map((line) => [
      size(line.heightMm, line.standing === 'measured'), size(line.thicknessMm, line.thicknessStanding === 'measured'), wordLength(line.lengthMm, units),
      plainText(line.name), plainText(line.mates ?? ''), plainText(line.slot ?? ''), stateOf(line, units), line.code,
    ]),
  ], [0, 1, 2])
}

function stateOf({ trust, where }: RackLine, { words }: Units): string {
  switch (where.at) {
    case 'slot': return trustWords[trust]
    case 'vise': return `${trustWords[trust]}, in a ${termsFor(words).vise}`
    case 'out': return `${trustWords[trust]}, out: ${plainText(where.who)}`
  }
}

function filterFrom(options: ListOptions, { units }: ShopRecord): RackFilter {
  const size = (name: 'height' | 'thickness' | 'length') => {
    const text = options[name]
    return text === undefined ? {} : { [`${name}Mm`]: readLengthMm(text, options.unit ?? units.length, name) }
  }
  return {
    ...size('height'), ...size('thickness'), ...size('length'),
    ...(options.find === undefined ? {} : { find: options.find }),
    ...(options.trust === undefined ? {} : { trust: readTrust(options.trust) }),
    ...(options.gone ? { gone: true } : {}),
  }
}

/** `beater` is what screens call a drill bar. @throws Refusal `unknown-word` */
function readTrust(text: string): Trust {
  const word = text.trim().toLowerCase(), trust = trusts.find((known) => known === word || trustWords[known] === word)
  if (!trust) throw new Refusal('unknown-word', { field: 'trust', given: text, needed: [...trusts] })
  return trust
}
