import type { ReactNode } from 'react'
import type { Finding } from '#model/finding.ts'
import { Refusal } from '#model/refusal.ts'
import type { Sum } from '#model/sum.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { StatusLine } from '#web/parts/status-line.tsx'
import { useUnits } from '#web/units.ts'

/** A part of a step card that is worked out: its fields, what comes of them, what to know, the sums; a refusal in its place. */
export function Computed<Answer extends { readonly findings: readonly Finding[]; readonly sum: readonly Sum[] }>(
  { title, fields, answer, children }: { readonly title: string; readonly fields?: ReactNode; readonly answer: Answer | Refusal | null; readonly children: (answer: Answer) => ReactNode },
) {
  const units = useUnits()
  return (
    <section aria-label={title} className="mk-computed">
      <h3>{title}</h3>
      {fields ? <div className="field-list">{fields}</div> : null}
      {answer instanceof Refusal ? <StatusLine danger>{sayRefusal(answer, units)}</StatusLine> : answer === null ? null : (
        <>
          {children(answer)}
          {answer.findings.length > 0 ? <ul className="mk-notes">{answer.findings.map((one, at) => <li key={at}>{sayFinding(one, units)}</li>)}</ul> : null}
          <ShowSum sums={answer.sum} />
        </>
      )}
    </section>
  )
}
