import { inColumns, plainText } from '#cli/columns.ts'
import type { DataOptions, PaperOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { withShop } from '#cli/with-shop.ts'
import { wrapped } from '#cli/wrapped.ts'
import { writeText } from '#cli/write-text.ts'
import { cardPages } from '#tasks/setup/card-pages.ts'
import { cardOfVise } from '#tasks/setup/card-of-vise.ts'
import { viseNamed } from '#tasks/setup/vise-named.ts'
import { sayViseCard } from '#words/say-vise-card.ts'

export type CardOptions = DataOptions & PaperOptions & { readonly vise?: string; readonly svg?: string }

export async function cardCommand({ data, vise, paper, svg }: CardOptions, out: Out): Promise<void> {
  await withShop(data, async (store, { units, paper: usual }) => {
    const card = await cardOfVise(store, (await viseNamed(store, vise ?? null)).id), day = new Date().toISOString().slice(0, 10)
    const { title, facts, headings, rows, notes } = sayViseCard(card, day, units)
    out.answer([
      `${plainText(title)}\n`, ...facts.map((fact) => wrapped(plainText(fact), out.columns)), '\n',
      inColumns([headings, ...rows].map(({ pair, slot, from, grip, drill }) => [plainText(pair), plainText(slot), from, grip, drill]), [2, 3, 4]), '\n',
      ...notes.map((note) => wrapped(note, out.columns, '- ')),
    ].join(''))
    if (svg === undefined) return
    const pages = cardPages(card, day, paper ?? usual)
    for (const [at, page] of pages.entries()) await writeText(pageName(svg, at), page)
    out.say(`Drawn on ${paper ?? usual} into ${pages.map((_, at) => pageName(svg, at)).join(', ')}.\n`)
  })
}

/** The first page under the name given, the others numbered: `card.svg`, `card-2.svg`. */
function pageName(file: string, at: number): string {
  return at === 0 ? file : file.replace(/(\.\w+)?$/, (ending) => `-${at + 1}${ending}`)
}
