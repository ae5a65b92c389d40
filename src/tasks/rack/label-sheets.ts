import { type Label, labelPages } from '#drafting/rack/labels.ts'
import type { Paper } from '#drafting/paper.ts'
import { svgFile } from '#drafting/svg.ts'
import { labelText } from '#model/label-code.ts'
import { recordOf, recordsOf } from '#store/records.ts'
import { atOneMoment, type Store } from '#store/store.ts'
import { barNamed } from '#tasks/rack/bar-named.ts'
import { listRack } from '#tasks/rack/list-rack.ts'
import { calledSize } from '#words/say-bar.ts'

/** Which labels: of these bars, or of all; with the slots or without. */
export type LabelsAsked = { readonly bars?: readonly string[]; readonly slots?: boolean; readonly paper?: Paper }

/** Strips for bars and slots, as they are printed: each with the text of its code (docs/labels.md). @throws Refusal `bar-not-known` */
export function labelsOf(store: Store, { bars, slots = false }: LabelsAsked): Promise<readonly Label[]> {
  return atOneMoment(store, async (tx) => {
    const { units } = await recordOf(tx, 'shop', 'shop'), lines = await listRack(tx), wanted = bars === undefined ? null : new Set<string>()
    for (const one of bars ?? []) wanted!.add((await barNamed(tx, one)).id)
    return [
      ...lines.filter(({ id }) => wanted === null || wanted.has(id)).map((line): Label => ({
        qr: labelText('bar', line.code), large: calledSize(line.heightMm, units), under: [line.name, line.slot === null ? '' : `slot ${line.slot}`].filter((text) => text !== '').join(' · '), code: line.code,
      })),
      ...(slots ? (await recordsOf(tx, 'slot')).toSorted((a, b) => (a.name < b.name ? -1 : 1)) : []).map(({ name, code }): Label => ({ qr: labelText('slot', code), large: name, under: 'slot', code })),
    ]
  })
}

/** The sheets to print, each an SVG file. */
export const labelFiles = (labels: readonly Label[], paper: Paper): readonly string[] =>
  labelPages({ title: 'Labels', description: `${labels.length} labels for bars and slots`, labels }, paper).map((page) => svgFile(page, 'print'))
