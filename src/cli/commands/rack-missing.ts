import { wordLength } from '#model/length.ts'
import { plainText } from '#cli/columns.ts'
import type { JsonOptions, UnitOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { withShop } from '#cli/with-shop.ts'
import { type CountAsked, type SetAsked, trySetOfShop, whatIsMissing } from '#tasks/rack/work-of-rack.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayUnread } from '#words/say-unread.ts'
import { termsFor } from '#words/terms.ts'

export type MissingOptions = JsonOptions & UnitOptions & { readonly vise?: string; readonly stacks?: true; readonly flat?: true; readonly step?: string; readonly thickness?: string }

export async function rackMissingCommand({ data, json, ...asked }: MissingOptions, out: Out): Promise<void> {
  await withShop(data, async (store, { units }) => {
    const missing = await whatIsMissing(store, countFrom(asked)), { setups, served, vises, next, unserved, lines, work } = missing
    if (json) { out.answer(`${JSON.stringify(missing)}\n`); return }
    const size = (mm: number) => wordLength(mm, units)
    const called = ({ title, from }: (typeof lines)[number]) => plainText(title || (from === 'unserved' ? 'asked, nothing served' : 'unnamed'))
    out.answer([
      `${served} of ${setups} served${work.typical > 0 ? `; ${work.typical} of them are a typical mix, since little is written down yet` : ''}.`,
      ...vises.flatMap(({ name, setups: all, served: own, gaps }) => [`${plainText(name)}: ${own} of ${all}`, ...gaps.map(({ lowMm, highMm, setups: count }) => `  missing ${size(lowMm)} to ${size(highMm)}: ${count}`)]),
      ...next.map(({ heightsMm, gained, count, rangesMm }) => `${count === 1 ? 'The next height' : `The next ${count}`}: ${heightsMm.map((mm, k) => `${size(mm)} (${size(rangesMm[k]![0])} to ${size(rangesMm[k]![1])})`).join(', ')} gains ${gained}.`),
      ...unserved.map(({ setup, why }) => ({ line: lines[setup]!, why })).filter(({ line }) => line.from !== 'typical')
        .map(({ line, why }) => `- ${called(line)}, ${plainText(line.vise)}: ${sayFinding({ code: why, facts: {} }, units)}`),
    ].map((line) => `${line}\n`).join(''))
    if (work.unread > 0) out.say(`${sayUnread(work.unread, termsFor(units.words))}\n`)
  })
}

type TrySizes = Pick<SetAsked, 'from' | 'to' | 'setStep' | 'setThickness' | 'setLength'>

export async function rackTryCommand(sizes: TrySizes, { data, json, ...asked }: MissingOptions, out: Out): Promise<void> {
  await withShop(data, async (store, { units }) => {
    const tried = await trySetOfShop(store, { ...countFrom(asked), ...sizes }), { now, withSet, setAlone, usefulMm, heightsMm, vises } = tried
    if (json) { out.answer(`${JSON.stringify(tried)}\n`); return }
    const size = (mm: number) => wordLength(mm, units)
    const names = new Map((await whatIsMissing(store, countFrom(asked))).vises.map(({ id, name }) => [id, name]))
    out.answer([
      `Now ${now.served} of ${now.setups} served, with the set ${withSet.served}, with the set alone ${setAlone.served}.`,
      `${usefulMm.length} of ${heightsMm.length} heights would be used: ${usefulMm.map(size).join(', ') || 'none'}.`,
      ...vises.flatMap(({ id, tooHighMm, tooLong }) => [
        ...(tooHighMm.length === 0 ? [] : [`${plainText(names.get(id) ?? id)}: ${tooHighMm.map(size).join(', ')} stand as high as the jaws or higher.`]),
        ...(tooLong === true ? [`${plainText(names.get(id) ?? id)}: the bars are longer than the jaws are wide.`] : []),
      ]),
    ].map((line) => `${line}\n`).join(''))
  })
}

const countFrom = ({ vise, stacks, flat, step, thickness, unit }: MissingOptions): CountAsked => ({
  stacks: stacks === true, flat: flat === true, ...(vise === undefined ? {} : { vise }), ...(step === undefined ? {} : { step }), ...(thickness === undefined ? {} : { thickness }), ...(unit === undefined ? {} : { unit }),
})
