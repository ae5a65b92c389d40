import { useState, type FormEvent } from 'react'
import type { CoverageQuestion } from '#engine/rack/coverage/coverage-question.ts'
import { type SetTried, type TriedSet, tryASet } from '#engine/rack/coverage/try-a-set.ts'
import { attempt } from '#model/attempt.ts'
import type { Bar } from '#model/bar.ts'
import { readSizeMm, wordLength } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { toFirstWrong } from '#web/parts/first-wrong.ts'
import { LengthField } from '#web/parts/length-field.tsx'
import { readFields } from '#web/parts/read-fields.ts'
import { useUnits } from '#web/units.ts'

type Props = { readonly question: CoverageQuestion; readonly bars: readonly Bar[]; readonly shop: ShopSnapshot }
type Typed = { readonly [name in keyof SetTried]: string }
const labels: { readonly [name in keyof SetTried]: string } = { fromMm: 'from', toMm: 'to', stepMm: 'step', thicknessMm: 'thickness', lengthMm: 'length' }
const names = Object.keys(labels) as (keyof SetTried)[]

/** A set before it is bought, as if it were owned. */
export function TrySet({ question, bars, shop }: Props) {
  const units = useUnits(), [typed, setTyped] = useState<Typed>({ fromMm: '', toMm: '', stepMm: '', thicknessMm: '', lengthMm: '' })
  const [wrong, setWrong] = useState<{ readonly [name in keyof SetTried]?: Refusal }>({}), [set, setSet] = useState<SetTried | null>(null), [refused, setRefused] = useState<Refusal | null>(null)
  const tried = set === null ? null : tryOf(question, bars, set)
  const look = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault()
    const read = readFields<SetTried>(Object.fromEntries(names.map((name) => [name, () => readSizeMm(typed[name], units.length, name)])) as { [name in keyof SetTried]: () => number })
    setRefused(null)
    if ('refused' in read) { setWrong(read.refused); setSet(null); return toFirstWrong(event.currentTarget) }
    setWrong({})
    const answer = tryOf(question, bars, read.values)
    if (answer instanceof Refusal) { setRefused(answer); setSet(null) } else setSet(read.values)
  }
  return (
    <section className="boxed try-set">
      <h2>Try a set before buying</h2>
      <form onSubmit={look} noValidate>
        <div className="field-list">{names.map((name) => <LengthField key={name} label={labels[name]} more="of the set" value={typed[name]} onChange={(text) => setTyped({ ...typed, [name]: text })} refused={wrong[name]} />)}</div>
        <div className="rack-ways"><button className="action main">Try it</button></div>
      </form>
      {refused ? <p className="status--danger" role="alert">{sayRefusal(refused, units)}</p> : null}
      <output>{tried === null || tried instanceof Refusal ? null : <Tried tried={tried} shop={shop} units={units} />}</output>
    </section>
  )
}

function tryOf(question: CoverageQuestion, bars: readonly Bar[], set: SetTried): TriedSet | Refusal {
  return attempt(() => tryASet(question, bars, set))
}

function Tried({ tried: { heightsMm, now, withSet, setAlone, usefulMm, vises }, shop, units }: { readonly tried: TriedSet; readonly shop: ShopSnapshot; readonly units: Units }) {
  const say = (all: readonly number[]) => all.map((mm) => wordLength(mm, units)).join(units.decimalMark === ',' ? '; ' : ', '), idle = heightsMm.filter((mm) => !usefulMm.includes(mm))
  const complaints = vises.flatMap(({ id, tooHighMm, tooLong }) => {
    const name = shop.vises.find((vise) => vise.id === id)?.name ?? '?'
    return [...(tooHighMm.length > 0 ? [`${name}: ${tooHighMm.length === heightsMm.length ? 'all' : say(tooHighMm)} stand as high as the jaws or above them.`] : []), ...(tooLong ? [`${name}: the bars are longer than the jaws are wide.`] : [])]
  })
  return (
    <div className="tried">
      <p className="big-line"><strong className="big">{withSet.served}</strong> of {withSet.setups} served with it</p>
      <dl className="facts">
        <div><dt>now</dt><dd>{now.served}</dd></div>
        <div><dt>the set alone</dt><dd>{setAlone.served}</dd></div>
        <div><dt>heights in it</dt><dd>{heightsMm.length}</dd></div>
      </dl>
      {idle.length > 0 ? <p>{idle.length === heightsMm.length ? 'None of its heights serves anything that is counted.' : `${idle.length} of its heights serve nothing that is counted: ${say(idle)}.`}</p> : <p>Each of its heights serves something.</p>}
      {complaints.map((said) => <p key={said} className="name-text"><span className="mark" aria-hidden="true">!</span> {said}</p>)}
    </div>
  )
}
