import { dayNumber, dayOf } from '#engine/numeric/days.ts'
import { today } from '#web/today.ts'

const days = { whenever: null, today: 0, tomorrow: 1, 'in three days': 3, 'in a week': 7, 'in a month': 30 } as const
export type DueIn = keyof typeof days

export const dueOptions = (Object.keys(days) as DueIn[]).map((value) => ({ value, label: value === 'whenever' ? 'whenever: no day said' : value }))

/** The day bars are due back; null: nobody said. */
export function dueDay(dueIn: DueIn): string | null {
  const after = days[dueIn]
  return after === null ? null : dayOf(dayNumber(today()) + after)
}
