import { answerBudget } from '#engine/inspect/answer-budget.ts'
import { answerLine } from '#engine/inspect/answer-line.ts'
import { answerMates } from '#engine/inspect/answer-mates.ts'
import { answerShape } from '#engine/inspect/answer-shape.ts'
import { answerTurnOver } from '#engine/inspect/answer-turn-over.ts'
import { answerVerdict } from '#engine/inspect/answer-verdict.ts'
import { answerOrder } from '#engine/make/order/answer-order.ts'
import { answerStraighten } from '#engine/make/straighten/answer-straighten.ts'
import { answerCoverage } from '#engine/rack/coverage/answer-coverage.ts'
import { answerHeights } from '#engine/rack/heights/answer-heights.ts'
import { answerRegrind } from '#engine/rack/regrind/answer-regrind.ts'
import { answerHold } from '#engine/setup/hold/answer-hold.ts'
import { answerPlaces } from '#engine/setup/answer-places.ts'
import { answerSeat } from '#engine/setup/seat/answer-seat.ts'
import { answerElastic } from '#engine/setup/seat-elastic/answer-elastic.ts'
import { answerTilt } from '#engine/setup/tilt/answer-tilt.ts'
import { answerSetup } from '#engine/setup/answer-setup.ts'
import { answerWindow } from '#engine/setup/answer-window.ts'
import { answerBlock } from '#engine/setup/block/answer-block.ts'
import { answerChuck } from '#engine/setup/chuck/answer-chuck.ts'
import { answerFill } from '#engine/setup/fill/answer-fill.ts'
import { answerGuilty } from '#engine/setup/guilty/answer-guilty.ts'
import { answerMany } from '#engine/setup/many/answer-many.ts'
import { answerPaper } from '#engine/setup/paper/answer-paper.ts'
import { answerRow } from '#engine/setup/row/answer-row.ts'
import { answerTable } from '#engine/setup/table/answer-table.ts'
import { blanksByTheBooks, planByTheBooks, routeByTheBooks } from '#tasks/make/making-by-the-books.ts'
import { attempt } from '#model/attempt.ts'
import { type Facts, Refusal } from '#model/refusal.ts'
import { cuttingByTheBooks } from '#tasks/make/cutting-by-the-books.ts'
import { grindByTheBooks } from '#tasks/make/grind-by-the-books.ts'
import { heatByTheBooks } from '#tasks/make/heat-by-the-books.ts'

export type Calculation = {
  /** What it answers, in a line. */
  readonly title: string
  /** One case as data to one answer as data. */
  readonly answer: (raw: unknown) => unknown
}

/** A case that was refused, in its place in an array of answers. */
export type RefusedCase = { readonly refused: string; readonly facts: Facts }

/** Every calculation that can be called as data; what stands here is what command and server know. */
export const calculations: { readonly [name: string]: Calculation } = {
  window: { title: 'The seat heights that serve, and what sets each end.', answer: answerWindow },
  places: { title: 'Where given bars may stand among holes and cuts that come out below.', answer: answerPlaces },
  setup: { title: 'Which bars of a rack to use, how they stand, and why not the others.', answer: answerSetup },
  'seat': { title: 'How a part comes to lie on measured bars: what is loose, by how much, and how far out of level.', answer: answerSeat },
  'seat-elastic': { title: 'The same on bars that give: forces, and the down-force that would close a gap.', answer: answerElastic },
  'tilt': { title: 'What the part will come out as, with every uncertainty drawn, and what to measure first.', answer: answerTilt },
  'hold': { title: 'Clamp and friction against cutter and drill, as ratios, and what was not computed.', answer: answerHold },
  'row': { title: 'Which pair in which vise of a row, so that all seats are as equal as they can be.', answer: answerRow },
  'paper': { title: 'Is it down: what strips of paper that pull out may mean.', answer: answerPaper },
  'table': { title: 'A part on bars under straps on a machine table.', answer: answerTable },
  'chuck': { title: 'Which bars block a part in on a magnetic chuck.', answer: answerChuck },
  'fill': { title: 'Which sizes of the rack fill a gap.', answer: answerFill },
  'setup-many': { title: 'One pair for many operations, or the fewest changes.', answer: answerMany },
  'guilty': { title: 'Four readings on a ground block: bars, block, bed or closing.', answer: answerGuilty },
  'block': { title: 'A block milled on six sides, in both orders.', answer: answerBlock },
  'shape': { title: 'Readings to bar: height, parallelism, taper, crown, twist, how two go together, and what they prove.', answer: answerShape },
  'turn-over': { title: 'Readings with either face up to bend and height error apart.', answer: answerTurnOver },
  'budget': { title: 'Measuring uncertainty from its parts.', answer: answerBudget },
  'verdict': { title: 'A value with its uncertainty against its limits: proved, not proved, out.', answer: answerVerdict },
  'mates': { title: 'The best pairs, or the most equal bars, out of a pile.', answer: answerMates },
  'line': { title: 'Straight line or polynomial through readings.', answer: answerLine },
  'heights': { title: 'The fewest heights that serve a list of windows, one high or two high.', answer: answerHeights },
  'coverage': { title: 'How much of the work the rack serves, where it fails, and which heights to own next.', answer: answerCoverage },
  'regrind': { title: 'Worn bars to one new height: what comes off, in how many passes.', answer: answerRegrind },
  'order': { title: 'Heights, length and number of bars to be made.', answer: answerOrder },
  'route': { title: 'The ways to make or get ordered bars, side by side, with what speaks against each.', answer: routeByTheBooks },
  'blanks': { title: 'Sizes of blanks with every allowance, and the stock they come out of.', answer: blanksByTheBooks },
  'plan': { title: 'What is left of the making of bars, from what was done and read so far.', answer: planByTheBooks },
  'straighten': { title: 'How deep and how hard to press a bent bar, and how much hangs on its yield stress.', answer: answerStraighten },
  'cutting': { title: 'Speed, feed, passes, force and power of milling an edge, and what the bending cutter leaves.', answer: cuttingByTheBooks },
  'grind': { title: 'What comes off each side of bars, in which passes and which order, and whether there is enough of it.', answer: grindByTheBooks },
  'heat': { title: 'Hardening and tempering to a wanted hardness, out of a steel\'s table or the shop\'s own.', answer: heatByTheBooks },
}

/**
 * One case to one answer; an array of cases to an array of answers, in which a refused case does not stop the rest.
 *
 * @throws Refusal `unknown-calculation`; for a single case whatever the calculation refuses
 */
export function calc(name: string, input: unknown): unknown {
  if (!Object.hasOwn(calculations, name)) throw new Refusal('unknown-calculation', { given: name.slice(0, 60), needed: Object.keys(calculations) })
  const { answer } = calculations[name]!
  return Array.isArray(input) ? input.map((one) => inItsPlace(answer, one)) : answer(input)
}

function inItsPlace(answer: Calculation['answer'], raw: unknown): unknown {
  const answered = attempt(() => answer(raw))
  return answered instanceof Refusal ? { refused: answered.code, facts: answered.facts } satisfies RefusedCase : answered
}
