import { useEffect, useRef } from 'react'
import type { JobView } from '#engine/make/job/job-view.ts'
import type { JobRecord } from '#model/job-record.ts'
import { sayStep } from '#words/say-make.ts'
import { StepDrawing } from '#web/make/job/step-drawing.tsx'
import { Link } from '#web/parts/link.tsx'

const marks = { done: { mark: '✓', word: 'done' }, next: { mark: '▸', word: 'next' }, open: { mark: '', word: 'to come' } } as const

/** All steps in the order of work; the open one is kept in view. */
export function StepStrip({ job, view, open }: { readonly job: JobRecord; readonly view: JobView; readonly open: number }) {
  const strip = useRef<HTMLOListElement>(null)
  useEffect(() => {
    const list = strip.current, card = list?.children[open]
    if (list && card instanceof HTMLElement) list.scrollLeft = card.offsetLeft - list.offsetLeft - (list.clientWidth - card.clientWidth) / 2
  }, [open])
  return (
    <nav aria-label="Steps">
      <ol className="mk-strip" ref={strip}>
        {view.plan.steps.map((step, at) => (
          <li key={step.kind}>
            <Link to={`/make/job/${job.id}/${at + 1}`} className="mk-stop" data-state={step.state} aria-current={at === open ? 'step' : undefined}>
              <StepDrawing view={view} step={step} plain />
              <span className="mk-stop-name">{step.state === 'open' ? null : <span className="mark" aria-hidden="true">{marks[step.state].mark}</span>} {at + 1} {sayStep(step.kind)}<span className="unseen">, {marks[step.state].word}</span></span>
            </Link>
          </li>
        ))}
      </ol>
    </nav>
  )
}
