import { readNumber, wordLength, wordNumber } from '#model/length.ts'
import type { JsonOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { withShop } from '#cli/with-shop.ts'
import { wrapped } from '#cli/wrapped.ts'
import { recordsOf } from '#store/records.ts'
import { regrindBars } from '#tasks/rack/work-of-rack.ts'

export type RegrindOptions = JsonOptions & { readonly bothFaces?: true; readonly datum?: 'A' | 'B'; readonly cleanUp?: string }

export async function rackRegrindCommand(bars: readonly string[], { data, json, bothFaces, datum, cleanUp }: RegrindOptions, out: Out): Promise<void> {
  await withShop(data, async (store, { units }) => {
    const plan = await regrindBars(store, { bars, faces: bothFaces ? 2 : 1, ...(datum === undefined ? {} : { datumFace: datum }), ...(cleanUp === undefined ? {} : { cleanUpUm: readNumber(cleanUp, 'cleanUp') }) })
    if (json) { out.answer(`${JSON.stringify(plan)}\n`); return }
    const { regrind, fits, now, after } = plan, codes = new Map((await recordsOf(store, 'bar')).map(({ id, code }) => [id, code])), um = (value: number) => `${wordNumber(value, units.decimalMark, null, 1)} µm`
    out.answer([
      `New height ${wordLength(regrind.newHeightMm, units)}; ${um(regrind.totalUm)} off the highest place, ${regrind.passesTotal} passes.`,
      ...regrind.bars.map(({ id, removalLowestUm, removalHighestUm, newHeightMm }) => `${codes.get(id) ?? id}: ${um(removalLowestUm)} off the lowest place, ${um(removalHighestUm)} off the highest${newHeightMm === undefined ? '' : `, to ${wordLength(newHeightMm, units)}`}.`),
      ...(regrind.note === undefined ? [] : [`The other face${regrind.datumFace ? `, ${regrind.datumFace},` : ''} is taken as true: check it on the plate first.`]),
      `It fits ${fits} of the setups; ${now.served} of ${now.setups} are served now, ${after.served} then. Never back to what is marked: mark the bars anew.`,
    ].map((line) => wrapped(line, out.columns)).join(''))
    out.say('Ring-test the wheel; follow the instructions of machine and wheel. Reground bars are looked at first until the plate has proved them.\n')
  })
}
