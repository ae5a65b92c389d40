import { useDesk } from '#web/setup/desk.ts'
import { type Pattern, patternNeeds } from '#web/setup/state/hole-pattern.ts'

const patterns: readonly { readonly pattern: Pattern; readonly name: string; readonly said: string }[] = [
  { pattern: 'along', name: '× 2 along', said: 'The same hole as far from the other end' },
  { pattern: 'across', name: '× 2 across', said: 'The same hole as far from the other jaw' },
  { pattern: 'four', name: '× 4', said: 'Four holes: as far from both ends and both jaws' },
]

/** Mirrors a hole in one touch. Where a size is missing for that, the cursor goes to it instead. */
export function HolePatterns({ index }: { readonly index: number }) {
  const { state: { form }, dispatch } = useDesk()
  const mirror = (pattern: Pattern) => {
    const needs = patternNeeds(form, index, pattern)
    if (needs === null) return dispatch({ do: 'mirror hole', index, pattern })
    document.querySelector<HTMLInputElement>(`[data-path="${CSS.escape(needs)}"] input`)?.focus()
  }
  return patterns.map(({ pattern, name, said }) => {
    const isReady = patternNeeds(form, index, pattern) === null, whole = `${name}: ${said}${isReady ? '' : ', needs a size first'}`
    return <button key={pattern} type="button" className="action" aria-label={whole} data-needs={isReady ? undefined : ''} onClick={() => mirror(pattern)}>{name}</button>
  })
}
