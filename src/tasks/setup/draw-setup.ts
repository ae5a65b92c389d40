import type { Scene } from '#drafting/scene.ts'
import type { SetupPicture } from '#drafting/setup/picture.ts'
import { setupSheetDrawing } from '#drafting/setup/sheet.ts'
import { sheetWords } from '#drafting/setup/sheet-words.ts'
import { svgFile } from '#drafting/svg.ts'
import { terminalFrom } from '#drafting/terminal.ts'
import { fittedJaws } from '#engine/rack/vise-from.ts'
import { standingOf } from '#engine/setup/standing.ts'
import type { Choice } from '#model/setup.ts'
import type { Units } from '#model/shop-record.ts'
import type { SetupAtVise } from '#tasks/setup/choose-for-vise.ts'
import { barCalled } from '#words/say-bar.ts'

/** Section and plan on a sheet, as an SVG file. `choice` null: the part without bars. */
export function setupSvg(at: SetupAtVise, choice: Choice | null, title: string, units: Units): string {
  return svgFile(drawing(at, choice, title, units, { widthMm: 190, heightMm: 240 }))
}

/** The section as lines of text. */
export function setupInText(at: SetupAtVise, choice: Choice | null, title: string, units: Units, columns: number): string {
  return terminalFrom(drawing(at, choice, title, units, { widthMm: 120, heightMm: 70, views: 'section' }), columns)
}

type Size = { readonly widthMm: number; readonly heightMm: number; readonly views?: 'section' }

function drawing(at: SetupAtVise, choice: Choice | null, title: string, units: Units, size: Size): Scene {
  return setupSheetDrawing(pictureOf(at, choice, units), { ...size, units, words: sheetWords(title, `Section and plan: ${title}.`, units.words), fields: 'none' })
}

function pictureOf({ vise, question, bars }: SetupAtVise, choice: Choice | null, units: Units): SetupPicture {
  const jaws = vise && fittedJaws(vise), higherMm = question.vise.jawHeightMm, lowerMm = question.vise.lowerJawHeightMm ?? higherMm
  const sized = new Map(bars.map((bar) => [bar.id, bar]))
  return {
    fixedJawHeightMm: jaws?.fixedHeightMm ?? higherMm, movingJawHeightMm: jaws?.movingHeightMm ?? lowerMm,
    jawWidthMm: question.vise.jawWidthMm ?? null, openingMm: question.vise.openingMm,
    ...question.part, cuts: question.cuts,
    seatMm: choice?.seatMm ?? null, gripMm: rough(choice?.gripMm), airMm: rough(choice?.airMm),
    bars: choice === null ? [] : standingOf(choice, sized).map(({ bar, ...standing }) => ({
      ...standing, label: barCalled(bar, units), lengthMm: bar.lengthMm, fouled: choice.fouledHoles.length > 0,
    })),
  }
}

/** Hundredths, as in the text beside it; the micrometres of measured bars only crowd a drawing. */
function rough(mm: number | null | undefined): number | null {
  return mm === null || mm === undefined ? null : Math.round(mm * 100) / 100
}
