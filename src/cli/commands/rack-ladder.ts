import { readNumber, wordLength } from '#model/length.ts'
import type { JsonOptions, UnitOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { withShop } from '#cli/with-shop.ts'
import { wrapped } from '#cli/wrapped.ts'
import { type LadderAsked, ladderOfShop } from '#tasks/rack/work-of-rack.ts'
import { sayFinding } from '#words/say-finding.ts'

export type LadderOptions = JsonOptions & UnitOptions & {
  readonly vise?: string; readonly vises?: string; readonly below?: string; readonly lowest?: string; readonly under?: string; readonly whole?: true
}

export async function rackLadderCommand(sizes: Pick<LadderAsked, 'step' | 'thickness'>, { data, json, vises, whole, ...typed }: LadderOptions, out: Out): Promise<void> {
  await withShop(data, async (store, { units }) => {
    const plan = await ladderOfShop(store, { ...typed, ...sizes, whole: whole === true, ...(vises === undefined ? {} : { vises: readNumber(vises, 'vises') }) }), { order, ownedMm } = plan, size = (mm: number) => wordLength(mm, units)
    if (json) { out.answer(`${JSON.stringify(plan)}\n`); return }
    out.answer([
      `${order.bars} bars, ${order.each} of each height, ${size(order.thicknessMm)} thick, ${size(order.lengthMm)} long: ${order.heightsMm.map(size).join(', ')}.`,
      ...(ownedMm.length === 0 ? [] : [`In the rack already, with mates enough: ${ownedMm.map(size).join(', ')}.`]),
      ...order.findings.map((finding) => sayFinding(finding, units)),
    ].map((line) => wrapped(line, out.columns)).join(''))
  })
}
