import type { DataOptions, PaperOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { withShop } from '#cli/with-shop.ts'
import { writeText } from '#cli/write-text.ts'
import { labelFiles, labelsOf } from '#tasks/rack/label-sheets.ts'

export type LabelOptions = DataOptions & PaperOptions & { readonly svg: string; readonly slots?: true }

export async function rackLabelsCommand(bars: readonly string[], { data, svg, slots, paper }: LabelOptions, out: Out): Promise<void> {
  await withShop(data, async (store, { paper: usual }) => {
    const labels = await labelsOf(store, { slots: slots === true, ...(bars.length === 0 ? {} : { bars }) }), pages = labelFiles(labels, paper ?? usual), names = pages.map((_, at) => (at === 0 ? svg : svg.replace(/(\.\w+)?$/, (ending) => `-${at + 1}${ending}`)))
    for (const [at, page] of pages.entries()) await writeText(names[at]!, page)
    out.say(`${labels.length} ${labels.length === 1 ? 'label' : 'labels'} on ${paper ?? usual} into ${names.join(', ')}.\n`)
  })
}
