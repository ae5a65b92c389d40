import type { Cut } from '#model/cut.ts'
import type { Window } from '#model/setup.ts'
import type { BlockQuestion, BlockSizes } from '#engine/setup/block/block-question.ts'
import { oppositeOf, type Face, type Turn } from '#engine/setup/block/orders.ts'
import { milledRunThroughMm } from '#engine/setup/read-cut.ts'
import { touchMm } from '#engine/setup/tolerance.ts'
import { windowOf, type WindowQuestion } from '#engine/setup/window.ts'

/** Lying: a long face is cut. Standing: an end, the block upright in the jaws. Past the jaw: an end that stands out beside it. */
export type How = 'lying' | 'standing' | 'past the jaw'

/** How the block is held for one face, and what that asks of the bars. */
export type Holding = {
  readonly turn: Turn
  readonly how: How
  readonly up: Face
  /** What comes off, in mm. */
  readonly depthMm: number
  /** Faces cut before this one. */
  readonly cutBefore: ReadonlySet<Face>
  /** The block as it sits, asked as a part of the setup. */
  readonly question: WindowQuestion
  readonly window: Window
}

/** One holding after the other; each face takes off its half of what comes off in its direction. */
export function holdingsOf(question: BlockQuestion, turns: readonly Turn[]): readonly Holding[] {
  const raw = sorted(question.raw), finish = sorted(question.finish), cutBefore = new Set<Face>()
  let now = raw
  return turns.map((turn) => {
    const size = sizeThrough[turn.cut], depthMm = (raw[size] - finish[size]) / 2
    const holding = holdingOf(question, turn, now, depthMm, new Set(cutBefore))
    cutBefore.add(turn.cut)
    now = { ...now, [size]: now[size] - depthMm }
    return holding
  })
}

/** The wider face is the first: what lies between it and its opposite is the lesser size. */
const sorted = ({ lengthMm, widthMm, heightMm }: BlockSizes): BlockSizes =>
  ({ lengthMm, widthMm: Math.max(widthMm, heightMm), heightMm: Math.min(widthMm, heightMm) })

/** Which size lies between a face and its opposite. */
const sizeThrough: { readonly [face in Face]: keyof BlockSizes } = { A: 'heightMm', D: 'heightMm', B: 'widthMm', C: 'widthMm', E: 'lengthMm', F: 'lengthMm' }

function holdingOf(question: BlockQuestion, turn: Turn, now: BlockSizes, depthMm: number, cutBefore: ReadonlySet<Face>): Holding {
  const facing = (heightMm: number, alongJawsMm: number): WindowQuestion =>
    asPart(question, { heightMm, alongJawsMm, betweenJawsMm: now[sizeThrough[turn.fixed]] }, { kind: 'face', depthMm, overJaw: true, runThroughMm: milledRunThroughMm })
  if (turn.cut !== 'E' && turn.cut !== 'F') {
    const asked = facing(now[sizeThrough[turn.cut]], now.lengthMm)
    return { turn, how: 'lying', up: turn.cut, depthMm, cutBefore, question: asked, window: windowOf(asked) }
  }
  const upright = facing(now.lengthMm, now.widthMm), window = windowOf(upright)
  // upright only where the rules of thumb for stick-out allow it; else flat, the end beside the jaws
  if (window.lowMm <= window.advisedHighMm + touchMm) return { turn, how: 'standing', up: turn.cut, depthMm, cutBefore, question: upright, window }
  const flat = asPart(question, { heightMm: now.heightMm, alongJawsMm: now.lengthMm, betweenJawsMm: now.widthMm },
    { kind: 'end', side: turn.cut === 'E' ? 'left' : 'right', stockMm: depthMm })
  return { turn: { cut: turn.cut, fixed: 'B' }, how: 'past the jaw', up: oppositeOf('A'), depthMm, cutBefore, question: flat, window: windowOf(flat) }
}

type Sitting = { readonly heightMm: number; readonly alongJawsMm: number; readonly betweenJawsMm: number }

const asPart = ({ vise, wishes }: BlockQuestion, sitting: Sitting, cut: Cut): WindowQuestion =>
  ({ vise, wishes, part: { shape: 'block', hollows: [], ...sitting }, cuts: [cut] })
