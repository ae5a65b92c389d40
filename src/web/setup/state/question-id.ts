import type { SetupQuestion } from '#model/setup.ts'

/**
 * The id under which a question that nothing served is counted: the same for the same sizes, vise and day, on any
 * device and however it was typed, so that it counts once.
 */
export function questionId(question: SetupQuestion, viseId: string, dayIso: string): string {
  const { vise, part, cuts, wishes } = question
  const text = JSON.stringify([viseId, vise, part, cuts, wishes])
  return `u-${dayIso.replaceAll('-', '')}-${hash(text, 0x811c9dc5)}${hash(text, 0x01000193)}`
}

/** FNV-1a over the code units, from a given start, as eight hex digits. @source FNV */
function hash(text: string, start: number): string {
  let sum = start
  for (let i = 0; i < text.length; i += 1) sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193)
  return (sum >>> 0).toString(16).padStart(8, '0')
}
