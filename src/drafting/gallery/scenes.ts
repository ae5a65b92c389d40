import { besideSetup, chuckSheet, rowSheet, tableSheet } from '#drafting/gallery/beside-setup.ts'
import { certificate, checkSheet, onPlate, pairMatched, profile, turnedBar, turnedOver } from '#drafting/gallery/checks.ts'
import { pictures } from '#drafting/gallery/pictures.ts'
import { barCard, inches, inchShelf, millimetres, setupSheet, shelf, viseCard } from '#drafting/gallery/sheets.ts'
import { labels, life, strip, years } from '#drafting/gallery/rack-sheets.ts'
import { barOnPlate } from '#drafting/inspect/bar-on-plate.ts'
import { cutList, cutBars, cutPlate, ladder, routeSheet, stepPictures } from '#drafting/gallery/make.ts'
import { certificatePages } from '#drafting/inspect/certificate.ts'
import { checkSheetPages } from '#drafting/inspect/check-sheet.ts'
import { pairMatch } from '#drafting/inspect/pair-match.ts'
import { profileDrawing } from '#drafting/inspect/profile.ts'
import { turnOverDrawing } from '#drafting/inspect/turn-over.ts'
import { barDrawing } from '#drafting/rack/bar-card.ts'
import { coverageStrip } from '#drafting/rack/coverage-strip.ts'
import { heightOverYears } from '#drafting/rack/height-over-years.ts'
import { careCard } from '#drafting/rack/care-card.ts'
import { labelPages } from '#drafting/rack/labels.ts'
import { lineOfLifePages } from '#drafting/rack/line-of-life.ts'
import { shelfDrawing } from '#drafting/rack/shelf.ts'
import { cutBarsDrawing, cutPlateDrawing } from '#drafting/make/cut-drawing.ts'
import { ladderDrawing } from '#drafting/make/ladder.ts'
import { cutListPages } from '#drafting/make/list-sheets.ts'
import { routeSheetPages } from '#drafting/make/route-sheet.ts'
import { stepPicture } from '#drafting/make/step-picture.ts'
import type { Scene } from '#drafting/scene.ts'
import { setupSheetPages } from '#drafting/setup/setup-sheet.ts'
import { setupSheetDrawing } from '#drafting/setup/sheet.ts'
import { sheetWords } from '#drafting/setup/sheet-words.ts'
import { viseCardPages } from '#drafting/setup/vise-card.ts'
import type { Medium } from '#drafting/svg-style.ts'
import { careWords } from '#words/say-care.ts'

export type GalleryPicture = { readonly name: string; readonly medium: Medium; readonly scene: Scene }

const tablet = { widthMm: 164, heightMm: 187 }, phone = { widthMm: 95, heightMm: 62, fields: 'none' } as const
const onPaper = { widthMm: 120, heightMm: 165, fields: 'none', scales: 'standard' } as const
const words = (name: string) => sheetWords(`Setup ${name}`, `Section and plan of the invented setup ${name}`, 'US')
const named = (name: string) => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)

/** Every drawing of the house once, on every kind of paper it is made for. */
export function galleryPictures(): readonly GalleryPicture[] {
  return [
    ...Object.entries(pictures).map(([name, picture]): GalleryPicture => ({
      name: `setup-${named(name)}`, medium: 'screen',
      scene: setupSheetDrawing(picture, { ...tablet, units: name === 'inches' ? inches : millimetres, words: words(name) }),
    })),
    ...(['inboard', 'lyingFlat', 'stack', 'intoBed', 'round'] as const).map((name): GalleryPicture =>
      ({ name: `phone-${named(name)}`, medium: 'screen', scene: setupSheetDrawing(pictures[name], { ...phone, units: millimetres, words: words(name) }) })),
    ...(['inboard', 'steps', 'large', 'inches'] as const).map((name): GalleryPicture =>
      ({ name: `print-${named(name)}`, medium: 'print', scene: setupSheetDrawing(pictures[name], { ...onPaper, units: name === 'inches' ? inches : millimetres, words: words(name) }) })),
    { name: 'narrow-fields', medium: 'screen', scene: setupSheetDrawing(pictures.inboard, { widthMm: 95, heightMm: 170, units: millimetres, words: words('narrow') }) },
    ...pages('setup-sheet', (paper) => setupSheetPages(setupSheet, paper)), ...pages('vise-card', (paper) => viseCardPages(viseCard, paper)),
    { name: 'shelf', medium: 'screen', scene: shelfDrawing(shelf, { widthMm: 164, units: millimetres }) },
    { name: 'shelf-inches-phone', medium: 'screen', scene: shelfDrawing(inchShelf, { widthMm: 95, units: inches }) },
    { name: 'bar-card', medium: 'screen', scene: barDrawing(barCard, { widthMm: 100, heightMm: 70, units: millimetres }) },
    { name: 'bar-card-cut', medium: 'print', scene: barDrawing({ ...barCard, heightMm: 8, thicknessMm: 20, lengthMm: 300 }, { widthMm: 120, heightMm: 45, units: millimetres }) },
    ...besideSetup.map(({ name, scene }): GalleryPicture => ({ name: `beside-${name}`, medium: 'screen', scene })), ...pages('row-sheet', (paper) => rowSheet(paper)), ...pages('table-sheet', (paper) => tableSheet(paper)), ...pages('chuck-sheet', (paper) => chuckSheet(paper)),
    ...inspectPictures(), ...rackPictures(), ...makePictures(),
  ]
}

function inspectPictures(): readonly GalleryPicture[] {
  const onScreen = { widthMm: 164, units: millimetres, fields: 'spots' } as const
  return [
    { name: 'on-plate-3', medium: 'screen', scene: barOnPlate(onPlate(3), onScreen) },
    { name: 'on-plate-9', medium: 'screen', scene: barOnPlate(onPlate(9), onScreen) },
    { name: 'on-plate-turn-over', medium: 'screen', scene: barOnPlate(onPlate(3, { bars: [turnedBar], zero: { bar: 0, xMm: 75 }, current: null }), onScreen) },
    { name: 'on-plate-phone', medium: 'screen', scene: barOnPlate(onPlate(5), { widthMm: 95, units: inches, fields: 'spots' }) },
    { name: 'on-plate-list', medium: 'screen', scene: barOnPlate(onPlate(5), { widthMm: 95, units: millimetres, fields: 'none' }) },
    { name: 'profile', medium: 'screen', scene: profileDrawing(profile, { widthMm: 164, heightMm: 34, units: millimetres }) },
    { name: 'profile-print', medium: 'print', scene: profileDrawing(profile, { widthMm: 100, heightMm: 30, units: inches }) },
    { name: 'pair-match', medium: 'screen', scene: pairMatch(pairMatched, { widthMm: 164, units: millimetres }) },
    { name: 'pair-match-phone', medium: 'screen', scene: pairMatch(pairMatched, { widthMm: 95, units: millimetres }) },
    { name: 'turn-over', medium: 'screen', scene: turnOverDrawing(turnedOver, { widthMm: 164, units: millimetres }) },
    ...pages('check-sheet', (paper) => checkSheetPages(checkSheet(), paper)), ...pages('certificate', (paper) => certificatePages(certificate(), paper)),
  ]
}

function rackPictures(): readonly GalleryPicture[] {
  return [
    { name: 'height-over-years', medium: 'screen', scene: heightOverYears(years, { widthMm: 164, heightMm: 70, units: millimetres }) },
    { name: 'height-over-years-phone', medium: 'screen', scene: heightOverYears(years, { widthMm: 95, heightMm: 60, units: inches }) },
    { name: 'coverage-strip', medium: 'screen', scene: coverageStrip(strip, { widthMm: 164, units: millimetres }) },
    { name: 'coverage-strip-phone', medium: 'screen', scene: coverageStrip(strip, { widthMm: 95, units: millimetres }) },
    ...pages('care-card', (paper) => [careCard({ ...careWords, shop: 'Demo shop (invented)' }, paper)]), ...pages('labels', (paper) => labelPages(labels(14), paper)), ...pages('line-of-life', (paper) => lineOfLifePages(life, paper)),
  ]
}

function makePictures(): readonly GalleryPicture[] {
  return [
    { name: 'make-ladder', medium: 'screen', scene: ladderDrawing(ladder, 164) }, { name: 'make-ladder-phone', medium: 'screen', scene: ladderDrawing(ladder, 95) },
    { name: 'make-cut-bars', medium: 'screen', scene: cutBarsDrawing(cutBars, 164) }, { name: 'make-cut-plate', medium: 'screen', scene: cutPlateDrawing(cutPlate, 164) },
    ...stepPictures.map((step): GalleryPicture => ({ name: `make-step-${step.kind.replaceAll(' ', '-')}`, medium: 'screen', scene: stepPicture(step) })),
    ...pages('route-sheet', (paper) => routeSheetPages(routeSheet, paper)), ...pages('cut-list', (paper) => cutListPages(cutList, paper)),
  ]
}

const pages = (name: string, drawn: (paper: 'A4' | 'Letter') => readonly Scene[]): readonly GalleryPicture[] =>
  (['A4', 'Letter'] as const).flatMap((paper) => drawn(paper).map((scene, index) => ({ name: `${name}-${paper.toLowerCase()}-${index + 1}`, medium: 'print' as const, scene })))
