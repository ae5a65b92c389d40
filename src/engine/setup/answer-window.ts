import type { AtSeat, Window } from '#model/setup.ts'
import type { Sum } from '#model/sum.ts'
import { atSeatOf } from '#engine/setup/at-seat.ts'
import { type Ignored } from '#engine/read/read-case.ts'
import { readWindowCase } from '#engine/setup/read-question.ts'
import { sumOfAtSeat, sumOfWindow } from '#engine/setup/window-sum.ts'
import { windowOf } from '#engine/setup/window.ts'

export type WindowAnswer = Window & Ignored & { readonly atSeat?: AtSeat; readonly sum: readonly Sum[] }

/** The calculation `window`: one raw case in, its answer out. @throws Refusal as `readWindowCase` */
export function answerWindow(raw: unknown): WindowAnswer {
  const { question, seatMm, ignored } = readWindowCase(raw), window = windowOf(question)
  if (seatMm === null) return { ...window, ignored, sum: sumOfWindow(question, window) }
  const atSeat = atSeatOf(question, window, seatMm)
  return { ...window, atSeat, ignored, sum: [...sumOfWindow(question, window), ...sumOfAtSeat(question, seatMm, atSeat)] }
}
