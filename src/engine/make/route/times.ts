import type { StepTime } from '#model/route.ts'

/**
 * How long steps take where the shop has not measured them: for one pair they add up to what the trade says of each route. Common
 * practice, no source.
 *
 * @source MAKE-RULES
 */
export const usualTimes: readonly StepTime[] = [
  time('order', 10, 0, 0), time('check the delivery', 2, 0, 0), time('saw', 4, 1, 2.5), time('square the ends', 3, 0, 1.5), time('mill the faces', 12, 0, 8),
  time('rough the edges', 15, 8, 3), time('let lie', 0, 0, 2), time('finish the edges', 0, 8, 2), time('spring pass', 0, 0, 2), time('deburr and mark', 0, 0, 2), time('rub', 5, 0, 8),
  time('clean for the furnace', 5, 0, 3), time('harden', 20, 0, 2, 120), time('temper', 10, 0, 0.5, 150), time('read after hardening', 2, 0, 4), time('straighten', 5, 0, 10), time('temper again', 5, 0, 0.5, 90),
  time('hard mill the edges', 20, 15, 20), time('grind the faces', 20, 0, 20), time('grind the edges', 25, 15, 25), time('demagnetise and cool', 2, 0, 1, 60), time('stone and clean', 0, 0, 1), time('inspect', 2, 0, 2),
  time('clean and demagnetise', 2, 0, 1), time('stone burrs', 0, 0, 2), time('read before grinding', 2, 0, 2), time('grind the first face', 25, 0, 8), time('grind the second face', 5, 0, 4), time('mark anew', 0, 0, 2),
]

function time(step: StepTime['step'], orderMin: number, heightMin: number, barMin: number, unattendedMin = 0): StepTime {
  return { step, orderMin, heightMin, barMin, unattendedMin }
}
