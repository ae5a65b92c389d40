import { type CSSProperties, useMemo, useState } from 'react'
import type { Scene } from '#drafting/scene.ts'
import { fourStripsDrawing, stripPlaces, type StripFound, type StripPlace } from '#drafting/setup/four-strips.ts'
import type { PictureRoom } from '#drafting/setup/scaled-piece.ts'
import { paperTold } from '#engine/setup/paper/answer-paper.ts'
import { felts, isAbout, type FeltStrips, stripsFelt } from '#engine/setup/paper/felt.ts'
import { wordLength } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { Choice } from '#web/parts/choice.tsx'
import { LengthField } from '#web/parts/length-field.tsx'
import { BesidePage } from '#web/setup/beside/beside-page.tsx'
import { chosenSetup } from '#web/setup/beside/chosen-setup.ts'
import { RoomDrawing } from '#web/setup/beside/room-drawing.tsx'
import { typedLength } from '#web/setup/beside/typed-length.ts'
import { DownAnswer } from '#web/setup/down/down-answer.tsx'
import { placedOn, spotStyle } from '#web/setup/sheet/spot-style.ts'
import { useTerms, useUnits } from '#web/units.ts'

/** mm. A thin strip, and how far its middle lies inside the end of a part. Common practice, no source. */
const commonStripMm = 0.03, commonInsideMm = 5

type Found = { readonly [place in StripPlace]: StripFound }
const untried: Found = { 'fixed-left': null, 'fixed-right': null, 'moving-left': null, 'moving-right': null }

/** Is it down? The part from above with a strip of paper under each corner; touch each as it answers a pull. */
export function DownScreen({ shop }: { readonly shop: ShopSnapshot }) {
  const units = useUnits(), { movingJaw } = useTerms()
  const chosen = useMemo(() => chosenSetup(shop, units, localStorage), [shop, units]), part = chosen?.view.answered?.question.part
  const [found, setFound] = useState<Found>(untried)
  const [texts, setTexts] = useState({ strip: '', between: '', along: '', across: '' }), [clamped, setClamped] = useState(true), [topOut, setTopOut] = useState(false)
  const read = (name: keyof typeof texts, elseMm: number | null) => typedLength(texts[name], units.length, name, elseMm)
  const strip = read('strip', commonStripMm), between = read('between', part?.betweenJawsMm ?? null), along = read('along', part?.alongJawsMm ?? null)
  const across = read('across', chosen?.barsApartMm ?? null)
  const felt = allTried(found)
  const told = useMemo(() => (felt === null || strip.mm === null ? null : paperTold({
    part: { betweenJawsMm: between.mm, alongJawsMm: along.mm }, stripMm: strip.mm, acrossMm: across.mm, alongMm: stripsApartMm(along.mm),
    strips: stripsFelt(felt), clamped, topOut,
  })), [felt, strip.mm, between.mm, along.mm, across.mm, clamped, topOut])
  const draw = useMemo(() => (room: PictureRoom) => fourStripsDrawing({
    title: 'Is it down?', description: 'The part from above, a strip of paper under each corner.',
    betweenJawsMm: between.mm, alongJawsMm: along.mm, found, marked: told?.lookAt ?? [],
    fixedJaw: 'fixed jaw', movingJaw, leftEnd: 'left end', rightEnd: 'right end',
  }, room), [between.mm, along.mm, found, told, movingJaw])
  const touch = (place: StripPlace) => setFound({ ...found, [place]: next(found[place]) })
  const put = (part: Partial<typeof texts>) => setTexts({ ...texts, ...part })
  const placeholder = (mm: number | null | undefined) => (mm === null || mm === undefined ? {} : { ifEmpty: wordLength(mm, units) })
  const tried = stripPlaces.filter((place) => found[place] !== null).length
  const buttons = (scene: Scene) => stripPlaces.map((place) => <StripButton key={place} place={place} found={found[place]} style={spotStyle(placedOn(scene, place)!)} onTouch={() => touch(place)} />)
  return (
    <BesidePage title="Is it down?" sheet={<RoomDrawing draw={draw} tall={0.86} mostMm={140} over={buttons} />}>
      <p>
        Put a strip of the same paper under all four corners, or under none: under some of them it tilts the part by its own thickness.{' '}
        Seat the part, tighten, pull each strip, and touch it here: <strong>tight</strong>, <strong>drags</strong>, <strong>free</strong>.
      </p>
      <div className="actions">
        <button type="button" className="action" onClick={() => setFound(all('tight'))}>All four tight</button>
        <button type="button" className="action" disabled={tried === 0} onClick={() => setFound(untried)}>Start again</button>
      </div>
      {told === null || felt === null ? <output className="status">{tried === 0 ? 'No strip tried yet.' : `${tried} of 4 strips tried.`}</output>
        : <DownAnswer told={told} about={isAbout(felt)} topOut={topOut} onTopOut={setTopOut} stripMm={strip.mm!} acrossMm={across.mm} />}
      <Choice label="The jaws are" value={clamped ? 'tight' : 'slack'} onChange={(value) => setClamped(value === 'tight')} options={jaws} />
      <div className="field-list">
        <LengthField label="paper" more="its thickness" value={texts.strip} onChange={(text) => put({ strip: text })} refused={strip.refused} ifEmpty={wordLength(commonStripMm, units)} />
        <LengthField label="between jaws" value={texts.between} onChange={(text) => put({ between: text })} refused={between.refused} {...placeholder(part?.betweenJawsMm)} />
        <LengthField label="along jaws" value={texts.along} onChange={(text) => put({ along: text })} refused={along.refused} {...placeholder(part?.alongJawsMm)} />
        <LengthField label="strip to strip, across" value={texts.across} onChange={(text) => put({ across: text })} refused={across.refused} {...placeholder(chosen?.barsApartMm)} />
      </div>
      <p className="small">
        What stands faintly comes from the setup on the screen; across it is from the middle of one bar to that of the other.{' '}
        A paper of {wordLength(commonStripMm, units)} is usual for this; measure yours.
      </p>
    </BesidePage>
  )
}

const jaws = [{ value: 'tight', label: 'tightened' }, { value: 'slack', label: 'open: the part lies free' }] as const

type Strip = { readonly place: StripPlace; readonly found: StripFound; readonly style: CSSProperties; readonly onTouch: () => void }

/** A strip that is touched as it answers a pull. */
function StripButton({ place, found, style, onTouch }: Strip) {
  const { movingJaw } = useTerms()
  return (
    <button type="button" className="strip-button" data-found={found ?? 'none'} style={style} onClick={onTouch} aria-label={`Strip at the ${nameOf(place, movingJaw)}: ${found ?? 'not tried'}`}>
      <span>{found ?? 'pull'}</span>
    </button>
  )
}

/** Between the middles of strips at both ends; null where the part is unknown or too short for it. */
const stripsApartMm = (alongMm: number | null): number | null => (alongMm === null || alongMm <= 2 * commonInsideMm ? null : alongMm - 2 * commonInsideMm)

const next = (found: StripFound): StripFound => felts[(found === null ? 0 : felts.indexOf(found) + 1) % felts.length]!
const all = (found: StripFound): Found => ({ 'fixed-left': found, 'fixed-right': found, 'moving-left': found, 'moving-right': found })
const allTried = (found: Found): FeltStrips | null => (Object.values(found).includes(null) ? null : (found as FeltStrips))
const nameOf = (place: StripPlace, movingJaw: string): string => `${place.startsWith('fixed') ? 'fixed jaw' : movingJaw}, ${place.endsWith('left') ? 'left' : 'right'} end`
