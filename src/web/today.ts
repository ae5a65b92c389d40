/** The day it is where the person is, `2026-03-31`. */
export const today = (): string => localDay(new Date())

/** The day on which something was, where the person is. */
export const dayOf = (iso: string): string => localDay(new Date(iso))

function localDay(at: Date): string {
  const two = (number: number) => String(number).padStart(2, '0')
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`
}
