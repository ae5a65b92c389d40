import { useMemo } from 'react'
import { seatPicture, type SeatPictureData } from '#drafting/setup/seat-picture.ts'
import type { WayForetold } from '#engine/setup/prediction/prediction.ts'
import type { Part } from '#model/part.ts'
import type { Choice } from '#model/setup.ts'
import { saySetupFinding } from '#words/say-setup-finding.ts'
import { wordingFor } from '#words/wording.ts'
import { Drawing } from '#web/parts/drawing.tsx'
import { type Desk, useDesk } from '#web/setup/desk.ts'
import { barLabel } from '#web/setup/answer/say-choice.ts'

/** Codes of findings that the picture says, each where it is. */
export const saidByPicture: readonly string[] = ['corner-loose']

/** The seat with its gaps enlarged; none where the part rocks or tips, which no one picture shows. */
export function SeatDrawing({ way, choice }: { readonly way: WayForetold; readonly choice: Choice }) {
  const desk = useDesk(), { view: { answered } } = desk
  const scene = useMemo(() => {
    const data = pictureData(way, choice, answered!.question.part, desk)
    return data && seatPicture(data, { widthMm: 96 })
  // oxlint-disable-next-line react/exhaustive-deps -- of the desk only what the drawing shows
  }, [way, choice, answered, desk.units])
  return scene && <div className="comes-out-seat"><Drawing scene={scene} /></div>
}

function pictureData({ seat }: WayForetold, { bars: ids, places }: Choice, part: Part, { bench, units, terms }: Desk): SeatPictureData | null {
  if (seat.status !== 'seated') return null
  const w = wordingFor(units), all = ids.flatMap((id) => bench.bars.get(id) ?? []), lowestMm = Math.min(...all.map(({ heightMm }) => heightMm))
  const gapOf = (at: number) => seat.loose.bars.find(({ bar }) => bar === at)?.leastGapUm ?? 0
  const bars = all.map((bar, at) => ({
    label: barLabel(bar.id, bench, units), ...places[at]!, thicknessMm: bar.thicknessMm, lengthMm: bar.lengthMm,
    aboveUm: (bar.heightMm - lowestMm) * 1000, gapUm: gapOf(at), gapSaid: w.micrometres(gapOf(at)),
  }))
  const loose = seat.loose.corners.map(({ corner, gapUm }) => ({ along: corner.endsWith('left') ? 0 : 1, across: corner.startsWith('fixed') ? 0 : 1, said: w.micrometres(gapUm) }) as const)
  return {
    title: 'How it lies', lengthMm: part.alongJawsMm!, widthMm: part.betweenJawsMm!, bars, loose, slopeUmPerMm: seat.plane.cUmPerMm,
    description: loose.length === 0 ? 'Every corner touches.' : seat.loose.corners.map(({ corner, gapUm }) => saySetupFinding({ code: 'corner-loose', facts: { corner, gapUm } }, units)).join(' '),
    words: { fixedJaw: 'fixed jaw', movingJaw: terms.movingJaw, loose: 'loose', carries: 'carries', leftEnd: 'left end', times: (factor) => `gaps × ${factor}` },
  }
}
