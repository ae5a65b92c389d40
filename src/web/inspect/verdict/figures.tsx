import type { Checked } from '#engine/inspect/checked.ts'
import { sayUm, shapeFigures } from '#web/inspect/verdict/say-verdict.ts'
import { useUnits } from '#web/units.ts'

type Figure = readonly [name: string, value: string]

/** Four numbers: of a pair how it goes together, of one bar its shape, of more how far they are apart. */
export function Figures({ answer }: { readonly answer: Checked | null }) {
  const units = useUnits(), um = (value: number | null) => sayUm(value, units)
  const figures: readonly Figure[] = answer === null || answer.method === 'rock' ? [] : answer.pair
    ? [['mean difference', um(Math.abs(answer.pair.meanDifferenceUm))], ['worst as laid', um(answer.pair.worstAsLaidUm)], ['turned', um(answer.pair.worstTurnedUm)], ['all within', um(answer.pair.allWithinUm)]]
    : answer.bars.length === 1 ? shapeFigures(answer.bars[0]!, units)
    : [['bars', String(answer.bars.length)], ['spread', um(answer.spreadUm)]]
  if (figures.length === 0) return null
  return <dl className="figures setup-figures">{figures.map(([name, value]) => <div key={name}><dt>{name}{name === 'bars' ? '' : ', µm'}</dt><dd>{value}</dd></div>)}</dl>
}
