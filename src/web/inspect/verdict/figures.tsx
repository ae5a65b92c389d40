import type { Checked } from '#engine/inspect/checked.ts'
import { sayUm } from '#web/inspect/verdict/say-verdict.ts'
import { useUnits } from '#web/units.ts'

type Figure = readonly [name: string, value: string]

/** Four numbers: of a pair how it goes together, of one bar its shape, of more how far they are apart. */
export function Figures({ answer }: { readonly answer: Checked | null }) {
  const units = useUnits(), um = (value: number | null) => sayUm(value, units)
  const figures: readonly Figure[] = answer === null || answer.method === 'rock' ? [] : answer.pair
    ? [['mean difference', um(Math.abs(answer.pair.meanDifferenceUm))], ['worst as laid', um(answer.pair.worstAsLaidUm)], ['turned', um(answer.pair.worstTurnedUm)], ['all within', um(answer.pair.allWithinUm)]]
    : answer.bars.length === 1 ? shapeFigures(answer.bars[0]!, (value) => sayUm(value, units, { sign: true }), um)
    : [['bars', String(answer.bars.length)], ['spread', um(answer.spreadUm)]]
  if (figures.length === 0) return null
  return <dl className="figures setup-figures">{figures.map(([name, value]) => <div key={name}><dt>{name}{name === 'bars' ? '' : ', µm'}</dt><dd>{value}</dd></div>)}</dl>
}

function shapeFigures({ shape, turnOver }: Checked['bars'][number], signed: (um: number | null) => string, um: (um: number | null) => string): readonly Figure[] {
  if (turnOver) return [['parallel to', um(turnOver.parallelismUm)], ['bow to face A', signed(turnOver.bowUm)], ['crown', signed(turnOver.heightCrownUm)]]
  if (!shape) return []
  const figures: readonly Figure[] = [['parallel to', um(shape.parallelismUm)], ['taper', signed(shape.taperUm)], [shape.crownUm !== null && shape.crownUm < 0 ? 'hollow' : 'crown', um(shape.crownUm === null ? null : Math.abs(shape.crownUm))], ['twist', signed(shape.twistUm)]]
  return figures.filter(([, value]) => value !== '–')
}
