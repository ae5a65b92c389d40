import type { Blank, CutList } from '#model/blank.ts'
import type { Finding } from '#model/finding.ts'
import type { Making } from '#model/making.ts'
import type { Hardening } from '#model/making-steel.ts'
import type { NewBarStep, ReadingAsked } from '#model/make-step.ts'
import type { Order } from '#model/order.ts'
import type { RouteKind } from '#model/route.ts'
import { finishPassMm, usualSaw } from '#engine/make/blanks/leave.ts'

/** mm. A bar that bows more than this once let go is relaxed and straightened before it is finished; faces that stay as they are may bow so much. Common practice, no source. */
const mostBowSoftMm = 0.1, mostBowFacesMm = 0.03

/** mm, over and under a size on the way. Common practice, no source. */
const sawnMm = 1, milledMm = 0.1

export type ContentQuestion = {
  readonly order: Order
  readonly route: RouteKind
  readonly making: Making
  readonly blanks: readonly Blank[]
  readonly cuts: CutList | null
  readonly hardening: Hardening | null
}

/** What to do at a step. */
export function contentOf(step: NewBarStep, { order, route, making, hardening }: ContentQuestion): readonly Finding[] {
  const saw = making.machines.find(({ kind }) => kind === 'saw'), say = (code: string, facts: Finding['facts'] = {}): readonly Finding[] => [{ code, facts }]
  switch (step) {
    case 'order': return say('order-heights', { heightsMm: order.heightsMm, each: order.each })
    case 'check the delivery': return say(route === 'bought' ? 'record-as-found' : 'measure-ends-and-middle')
    case 'saw': return say('saw-mates-side-by-side', { kerfMm: saw?.kerfMm ?? usualSaw.kerfMm })
    case 'square the ends': return say('square-ends', { lengthMm: order.lengthMm })
    case 'mill the faces': return say('mill-faces-evenly', { eachMm: making.leave.faceMm })
    case 'rough the edges': return say(hardening === null ? 'rough-in-pairs' : 'mill-before-hardening', { leaveMm: finishPassMm })
    case 'let lie': return say('let-lie-and-look', { bowMm: mostBowSoftMm })
    case 'finish the edges': return say('finish-conventional', { leaveMm: finishPassMm })
    case 'spring pass': return say('spring-climb')
    case 'deburr and mark': return say('mark-on-ends')
    case 'rub': return say('rub-and-turn', { takesMm: making.leave.rubMm })
    case 'clean for the furnace': return say('wrap-against-skin')
    case 'harden': return say('harden-together', { quench: hardening?.quench ?? null })
    case 'temper': return say('temper-at-once', { hrc: order.hrc })
    case 'read after hardening': return say('read-what-hardening-did')
    case 'straighten': return say('press-to-bow', { bowMm: making.leave.bowMm })
    case 'temper again': return say('temper-below-last')
    case 'hard mill the edges': return say('hard-mill-light')
    case 'grind the faces': return say('hollow-side-down')
    case 'grind the edges': return [...say('edges-as-pack'), ...say('sit-down-before-second')]
    case 'demagnetise and cool': return say('wipe-then-cool')
    case 'stone and clean': return say('stone-edges')
    case 'inspect': return say('read-at-plate', { limitUm: making.limitsUm[order.use], use: order.use })
  }
}

/** What to read after a step, and within what the work goes on. */
export function readsAfter(step: NewBarStep, { order, route, making, blanks, hardening }: ContentQuestion): readonly ReadingAsked[] {
  const limitMm = making.limitsUm[order.use] / 1000, read = (what: ReadingAsked['what'], places: number, least: number | null, most: number | null): ReadingAsked => ({ what, places, least, most })
  const hasFaces = making.faces && route === 'ground', perSideMm = least(blanks.map((blank) => blank.perSideMm.height)), facePerSideMm = least(blanks.map((blank) => blank.perSideMm.thickness))
  switch (step) {
    case 'check the delivery': return route === 'bought' ? [read('height', 3, null, null)] : [read('height', 3, null, null), read('thickness', 3, null, null), read('bow of the faces', 1, null, null)]
    case 'saw': return [read('length', 1, -sawnMm, sawnMm)]
    case 'square the ends': return [read('length', 1, null, milledMm)]
    case 'mill the faces': return [read('thickness', 3, hardening === null ? null : 0, milledMm)]
    case 'rough the edges': return [read('height', 3, 0, milledMm)]
    case 'let lie': return [read('bow of the edges', 1, null, mostBowSoftMm), read('bow of the faces', 1, null, mostBowSoftMm)]
    case 'finish the edges': return [read('height', 3, null, null)]
    case 'spring pass': return [read('height', 3, null, null), read('difference of mates', 3, null, limitMm)]
    case 'rub': return [read('difference of mates', 3, null, limitMm)]
    case 'read after hardening': return [
      read('hardness', 3, order.hrc, null), read('height', 3, null, null), read('bow of the edges', 1, null, room(perSideMm, making)), read('bow of the faces', 1, null, hasFaces ? room(facePerSideMm, making) : mostBowFacesMm),
    ]
    case 'straighten': return [read('bow of the edges', 1, null, making.leave.bowMm), read('bow of the faces', 1, null, hasFaces ? making.leave.bowMm : mostBowFacesMm)]
    case 'hard mill the edges': return [read('height', 3, null, null), read('difference of mates', 3, null, limitMm)]
    case 'grind the faces': return [read('thickness', 3, null, null)]
    case 'grind the edges': return [read('height', 3, null, null)]
    case 'inspect': return [read('height', 10, null, null), read('difference of mates', 5, null, limitMm)]
    case 'order':
    case 'deburr and mark':
    case 'clean for the furnace':
    case 'harden':
    case 'temper':
    case 'temper again':
    case 'demagnetise and cool':
    case 'stone and clean': return []
  }
}

const least = (mm: readonly number[]): number => mm.reduce((a, b) => Math.min(a, b), Infinity)

/** What is left on a side once clean-up and skin are counted: so much bow it can take. */
const room = (perSideMm: number, { leave }: Making): number | null => (perSideMm === Infinity ? null : Math.round(1e6 * Math.max(0, perSideMm - leave.cleanUpMm - leave.skinMm)) / 1e6)
