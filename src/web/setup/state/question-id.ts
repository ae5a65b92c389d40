import type { SetupQuestion } from '#model/setup.ts'
import { fnv1a } from '#web/setup/state/fnv1a.ts'

/**
 * The id under which a question that nothing served is counted: the same for the same sizes, vise and day, on any
 * device and however it was typed, so that it counts once.
 */
export function questionId({ vise, part, cuts, wishes }: Pick<SetupQuestion, 'vise' | 'part' | 'cuts' | 'wishes'>, viseId: string, dayIso: string): string {
  const text = JSON.stringify([viseId, vise, part, cuts, wishes]), first = fnv1a(text)
  return `${dayIso.replaceAll('-', '')}-${first}${fnv1a(text, Number.parseInt(first, 16))}`
}
