import type { LineOfLifeData } from '#drafting/rack/line-of-life.ts'
import type { Named } from '#drafting/pieces.ts'
import { wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayFinding } from '#words/say-finding.ts'
import { lifeOf, yearsOf } from '#web/rack/life/life-of.ts'
import type { Histories } from '#web/rack/life/use-histories.ts'
import type { RackBar } from '#web/rack/rack-bars.ts'
import { nameAmong, nameOfBar, nameOfBars, sayState, trustWords } from '#web/rack/say-bar.ts'
import { sayWhere } from '#web/rack/say-where.ts'
import { proofOf } from '#web/rack/proof.ts'
import { sayDay, today } from '#web/today.ts'

/** Everything the page of a bar's life says, worded; of a pair its first bar is drawn, and each line names what it is about. */
export function lifeData(bars: readonly RackBar[], histories: Histories, shop: ShopSnapshot, units: Units): LineOfLifeData {
  const [first] = bars as readonly [RackBar], { record, calledMm } = first, pair = bars.length > 1, called = nameOfBars(bars, units)
  const day = sayDay(today()), lines = lifeOf(bars, histories, shop)
  const years = pair ? null : yearsOf(first, histories), change = lines.findLast(({ says }) => says.code === 'life-wear' || says.code === 'life-growth')
  return {
    title: `Line of life of ${called}`, description: `All that was written down about ${called}.`, heading: called, under: `Line of life up to ${day}`,
    code: { label: pair ? 'first bar' : 'bar', value: record.code }, units,
    foot: [[{ label: 'Shop', value: shop.shop.name, share: 0.6 }, { label: 'Printed on', value: day, share: 0.4 }]],
    bar: { label: nameOfBar(first, units), heightMm: calledMm ?? 1, thicknessMm: record.thicknessMm, lengthMm: record.lengthMm, markedEnd: 'marked end' },
    figures: figuresOf(first, shop, units), years,
    wear: change ? { heading: change.says.code === 'life-wear' ? 'Wear' : 'Growth', lines: [sayFinding(change.says, units)] } : null,
    heads: ['day', 'what', 'who'],
    rows: lines.toReversed().map(({ atIso, person, bars: of, says }) => [sayDay(atIso), `${of.length < bars.length ? `${bars.filter((bar) => of.includes(bar.record.id)).map((bar) => nameAmong(bar, bars, units)).join(', ')}: ` : ''}${sayFinding(says, units)}`, person || '–']),
  }
}

function figuresOf(bar: RackBar, shop: ShopSnapshot, units: Units): readonly Named[] {
  const { heightMm, standing, trust, mates, slot, record } = bar, proved = proofOf(record, shop).uses.flatMap(({ use, whyNot }) => (whyNot === null ? [use] : []))
  return [
    { label: 'Height', value: `${heightMm === null ? '?' : wordLength(heightMm, units, { decimals: units.length === 'mm' ? 3 : 5 })}, ${standing}` },
    { label: 'Trust', value: `${trustWords[trust].mark} ${trustWords[trust].word}` },
    { label: 'Proved for', value: proved.join(', ') || 'nothing' },
    { label: 'Mates', value: mates === null ? 'none' : mates.name || 'unnamed' },
    { label: 'Slot', value: slot?.name ?? 'none' },
    { label: 'Now', value: sayWhere(record.where, shop) },
    { label: 'State', value: sayState(bar) },
  ]
}
