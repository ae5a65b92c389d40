/** How a due date stands on a day, both `2027-03-31`; due on the day itself is not overdue yet. */
export function dueOf(dueOn: string | null, today: string): 'not kept' | 'in date' | 'soon' | 'overdue' {
  if (dueOn === null) return 'not kept'
  if (dueOn < today) return 'overdue'
  return daysBetween(today, dueOn) <= soonDays ? 'soon' : 'in date'
}

/** From here on it is said that it is due. Common practice, no source. */
const soonDays = 30

const daysBetween = (from: string, to: string): number => (Date.parse(to) - Date.parse(from)) / 86_400_000
