/** The day it is where the person is, `2026-03-31`. */
export function today(): string {
  const now = new Date(), two = (number: number) => String(number).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}
