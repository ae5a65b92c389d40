import { useEffect } from 'react'
import { nowIso } from '#web/new-id.ts'
import type { Desk } from '#web/setup/desk.ts'
import { questionId } from '#web/setup/state/question-id.ts'
import { writeUnserved } from '#web/write.ts'

/** How long a question has to stand before it counts as asked: longer while somebody still types in a field. */
const settledMs = { typing: 15_000, left: 3_000 }
const counted = new Set<string>()

/** Writes down a complete question that nothing in the rack served, once for each question and day. */
export function useUnserved({ view: { answered, counted: { form } }, bench: { vise }, state: { typing } }: Desk): void {
  const begun = typing?.begun ?? false, complete = form.offTop.trim() !== '' || form.proud.trim() !== ''
  const unserved = answered !== null && complete && answered.answer.choices.length === 0 ? answered : null
  useEffect(() => {
    if (unserved === null) return undefined
    const { question, answer: { window } } = unserved
    const later = setTimeout(() => {
      const id = questionId(question, vise.id, nowIso().slice(0, 10))
      if (counted.has(id)) return
      counted.add(id)
      writeUnserved({ id, viseId: vise.id, form, lowMm: window.lowMm, highMm: window.highMm })
    }, begun ? settledMs.typing : settledMs.left)
    return () => clearTimeout(later)
  }, [unserved, form, vise.id, begun])
}
