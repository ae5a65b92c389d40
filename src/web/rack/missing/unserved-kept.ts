import { useEffect, useState } from 'react'
import type { Unserved } from '#model/setup-record.ts'
import { ask } from '#web/api.ts'

/** The questions that nothing in the rack served, as the shop keeps them; null while they are not at hand. */
export function useUnservedKept(): readonly Unserved[] | null {
  const [kept, setKept] = useState<readonly Unserved[] | null>(null)
  useEffect(() => {
    let left = false
    ask<readonly Unserved[]>('/api/unserved').then((answer) => { if (!left) setKept(answer) }, () => { /* The shop is away: the screen says that they are not counted. */ })
    return () => { left = true }
  }, [])
  return kept
}
