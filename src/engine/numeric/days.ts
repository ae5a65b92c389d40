/**
 * Days since 1 March of the year 0 of a day like `2026-03-31`, by the rules of leap years alone: no clock and no time zone has a say.
 *
 * Counted from March, so that the leap day is the last of its year.
 */
export function dayNumber(day: string): number {
  const [year, month, date] = [Number(day.slice(0, 4)), Number(day.slice(5, 7)), Number(day.slice(8, 10))]
  const fromMarch = (month + 9) % 12, of = month <= 2 ? year - 1 : year
  return 365 * of + Math.floor(of / 4) - Math.floor(of / 100) + Math.floor(of / 400) + Math.floor((153 * fromMarch + 2) / 5) + date - 1
}

/** The day of a number, the other way round. */
export function dayOf(number: number): string {
  let of = Math.floor(number / 365.2425)
  while (firstOf(of + 1) <= number) of += 1
  while (firstOf(of) > number) of -= 1
  const rest = number - firstOf(of), fromMarch = Math.floor((5 * rest + 2) / 153), month = ((fromMarch + 2) % 12) + 1
  return `${String(month <= 2 ? of + 1 : of).padStart(4, '0')}-${two(month)}-${two(rest - Math.floor((153 * fromMarch + 2) / 5) + 1)}`
}

const firstOf = (of: number): number => 365 * of + Math.floor(of / 4) - Math.floor(of / 100) + Math.floor(of / 400)
const two = (count: number): string => String(count).padStart(2, '0')
