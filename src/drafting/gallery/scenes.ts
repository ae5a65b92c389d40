import { pictures } from '#drafting/gallery/pictures.ts'
import { barCard, inches, inchShelf, millimetres, setupSheet, shelf, viseCard } from '#drafting/gallery/sheets.ts'
import { barDrawing } from '#drafting/rack/bar-card.ts'
import { shelfDrawing } from '#drafting/rack/shelf.ts'
import type { Scene } from '#drafting/scene.ts'
import { setupSheetPages } from '#drafting/setup/setup-sheet.ts'
import { setupSheetDrawing } from '#drafting/setup/sheet.ts'
import { sheetWords } from '#drafting/setup/sheet-words.ts'
import { viseCardPages } from '#drafting/setup/vise-card.ts'
import type { Medium } from '#drafting/svg-style.ts'

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
    ...(['A4', 'Letter'] as const).flatMap((paper): readonly GalleryPicture[] => [
      ...setupSheetPages(setupSheet, paper).map((scene, index): GalleryPicture => ({ name: `setup-sheet-${paper.toLowerCase()}-${index + 1}`, medium: 'print', scene })),
      ...viseCardPages(viseCard, paper).map((scene, index): GalleryPicture => ({ name: `vise-card-${paper.toLowerCase()}-${index + 1}`, medium: 'print', scene })),
    ]),
    { name: 'shelf', medium: 'screen', scene: shelfDrawing(shelf, { widthMm: 164, units: millimetres }) },
    { name: 'shelf-inches-phone', medium: 'screen', scene: shelfDrawing(inchShelf, { widthMm: 95, units: inches }) },
    { name: 'bar-card', medium: 'screen', scene: barDrawing(barCard, { widthMm: 100, heightMm: 70, units: millimetres }) },
    { name: 'bar-card-cut', medium: 'print', scene: barDrawing({ ...barCard, heightMm: 8, thicknessMm: 20, lengthMm: 300 }, { widthMm: 120, heightMm: 45, units: millimetres }) },
  ]
}
