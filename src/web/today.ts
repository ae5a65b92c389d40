/** The day it is where the person is, `2026-03-31`. */
export const today = (): string => localDay(new Date())

/** The day on which something was, where the person is. */
export const dayOf = (iso: string): string => localDay(new Date(iso))

/** A day, or the day of a moment, as this person writes it. */
export function sayDay(iso: string): string {
  // A day alone would be taken for midnight in Greenwich: the day before, west of it.
  return new Date(iso.length === 10 ? `${iso}T12:00:00` : iso).toLocaleDateString(undefined, { day: 'numeric', month: 'short', year: 'numeric' })
}

function localDay(at: Date): string {
  const two = (number: number) => String(number).padStart(2, '0')
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`
}
