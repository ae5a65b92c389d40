import { useEffect, useMemo } from 'react'
import { cutBarsDrawing, cutPlateDrawing } from '#drafting/make/cut-drawing.ts'
import type { CutsFound } from '#engine/make/job/leftovers-of-job.ts'
import type { BarCut, PlateCut } from '#model/blank.ts'
import { wordLength } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { Scene } from '#drafting/scene.ts'
import type { Finding } from '#model/finding.ts'
import type { Sum } from '#model/sum.ts'
import { sayTaken } from '#words/say-cut.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { conditionWords } from '#words/say-make.ts'
import type { StepProps } from '#web/make/job/step-card.tsx'
import { barsDrawn, plateDrawn } from '#web/make/job/cut-plans.ts'
import { jobNamer } from '#web/make/job/job-namer.ts'
import { type Cutting, secondsMost, useCut } from '#web/make/job/use-cut.ts'
import { Drawing } from '#web/parts/drawing.tsx'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { StatusLine } from '#web/parts/status-line.tsx'
import { useUnits } from '#web/units.ts'

/** Told what is found for each cut list; null while it is being worked out. */
type Tell = { readonly onFound: (cut: string, answer: CutsFound[string]) => void }

/** The stock drawn to scale with the blanks in it, and how far it is proven that no less will do. */
export function CutCard({ shop, job, view: { route: { cuts } }, onFound }: StepProps & Tell) {
  const units = useUnits(), nameOf = jobNamer(job, shop)
  if (cuts === null) return null
  return (
    <section aria-label="Cut list" className="mk-computed">
      <h3>Cut list</h3>
      {cuts.short.length > 0 ? <p className="status--danger">No stock for {cuts.short.map(({ heightMm, count }) => `${count} of ${wordLength(heightMm, units)}`).join(', ')}.</p> : null}
      {cuts.findings.length > 0 ? <ul className="mk-notes">{cuts.findings.map((one, at) => <li key={at}>{sayFinding(one, units, nameOf)}</li>)}</ul> : null}
      {cuts.bars.map((cut, at) => <BarsCut key={`bars ${at}`} name={`bars ${at}`} cut={cut} onFound={onFound} />)}
      {cuts.plates.map((cut, at) => <PlateCutOut key={`plate ${at}`} name={`plate ${at}`} cut={cut} nameOf={nameOf} onFound={onFound} />)}
    </section>
  )
}

function BarsCut({ name, cut, onFound }: Tell & { readonly name: string; readonly cut: BarCut }) {
  const units = useUnits(), cutting = useCut('cut-bars', cut), { state, answer } = cutting
  useEffect(() => { onFound(name, state === 'working' ? null : answer) }, [onFound, name, state, answer])
  const scene = useMemo(() => (answer === null || answer instanceof Refusal || answer.plan.length === 0 ? null : cutBarsDrawing(barsDrawn(cut, answer, units), 164)), [cut, answer, units])
  return (
    <OneCut cutting={cutting} scene={scene} title={`${cut.steel}, ${conditionWords[cut.condition]}, ${wordLength(cut.widthMm, units)} × ${wordLength(cut.thicknessMm, units)}`}>
      {answer === null || answer instanceof Refusal || answer.leastStockLength === null ? null : `${sayTaken(answer.leastStockLength, 'of stock in all', answer.bound, units)}.`}
    </OneCut>
  )
}

function PlateCutOut({ name, cut, nameOf, onFound }: Tell & { readonly name: string; readonly cut: PlateCut; readonly nameOf: (id: string) => string }) {
  const units = useUnits(), cutting = useCut('cut-plate', cut), { state, answer } = cutting
  useEffect(() => { onFound(name, state === 'working' ? null : answer) }, [onFound, name, state, answer])
  const scene = useMemo(() => (answer === null || answer instanceof Refusal || answer.plan.length === 0 ? null : cutPlateDrawing(plateDrawn(cut, answer, units, nameOf), 164)), [cut, answer, units, nameOf])
  const over = answer !== null && !(answer instanceof Refusal) && answer.leastPlateLength !== null && answer.leastPlateLength > cut.plateLength + 1e-6
  return (
    <OneCut cutting={cutting} scene={scene} title={`${nameOf(cut.stockId)}, ${wordLength(cut.plateWidth, units)} wide, ${wordLength(cut.plateLength, units)} long`}>
      {answer === null || answer instanceof Refusal || answer.leastPlateLength === null ? null : `${sayTaken(answer.leastPlateLength, over ? 'of its length, more than there is' : 'of its length', answer.bound, units)}.`}
    </OneCut>
  )
}

type Shown = { readonly findings: readonly Finding[]; readonly sum: readonly Sum[] }

function OneCut({ cutting: { state, answer, stop }, scene, title, children }: { readonly cutting: Pick<Cutting<'cut-bars'>, 'state' | 'stop'> & { readonly answer: Shown | Refusal | null }; readonly scene: Scene | null; readonly title: string; readonly children: string | null }) {
  const units = useUnits()
  return (
    <div className="mk-cut">
      <h4>{title}</h4>
      {state === 'working' ? <div className="mk-working"><progress aria-label={`Working out: ${title}`} /><StatusLine>Working it out, {secondsMost} s at most.</StatusLine><button type="button" className="action" onClick={stop}>Stop here</button></div> : null}
      {answer instanceof Refusal ? <StatusLine danger>{sayRefusal(answer, units)}</StatusLine> : null}
      {state === 'stopped' ? <StatusLine>{answer === null ? 'Stopped before a way to cut was found.' : 'Stopped: the best way so far.'}</StatusLine> : null}
      {children === null ? null : <p>{children}</p>}
      {scene ? <Drawing scene={scene} /> : null}
      {answer === null || answer instanceof Refusal ? null : <><ul className="mk-notes">{answer.findings.map((one, at) => <li key={at}>{sayFinding(one, units)}</li>)}</ul><ShowSum sums={answer.sum} /></>}
    </div>
  )
}
