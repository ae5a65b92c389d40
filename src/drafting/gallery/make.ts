import { stepKinds } from '#model/make-step.ts'
import { type CutBarsData, cutBarsDrawing, type CutPlateData, cutPlateDrawing } from '#drafting/make/cut-drawing.ts'
import type { LadderData } from '#drafting/make/ladder.ts'
import type { CutSheetData } from '#drafting/make/list-sheets.ts'
import type { RouteSheetData } from '#drafting/make/route-sheet.ts'
import { stepPicture, type StepPictureData } from '#drafting/make/step-picture.ts'
import type { SheetFrame } from '#drafting/sheet-pages.ts'

/** Invented jobs for the gallery. */
export const ladder: LadderData = {
  title: 'What is ordered', description: 'Bars from 12 to 44 from their ends', jaw: { heightMm: 45, label: 'top of the jaw, 45' },
  bars: Array.from({ length: 17 }, (_, k) => ({ label: String(12 + 2 * k), heightMm: 12 + 2 * k, thicknessMm: 4 })),
}

export const cutBars: CutBarsData = {
  title: 'Stock lengths', description: 'Two ways of cutting', kerfMm: 1.5,
  lines: [
    { label: '2 × 3000', stockMm: 3000, pieces: Array.from({ length: 9 }, () => ({ label: '30 pair', lengthMm: 303.5 })) },
    { label: '1 × 1000', stockMm: 1000, pieces: [{ label: '30 pair', lengthMm: 303.5 }, { label: '20', lengthMm: 151 }] },
  ],
}

export const cutPlate: CutPlateData = {
  title: 'Plate', description: 'Three strips', kerfMm: 1.5, widthMm: 260, lengthMm: 1000,
  strips: [46, 44, 14].map((heightMm) => ({ heightMm, pieces: Array.from({ length: 2 }, () => ({ label: String(heightMm), lengthMm: 125, upMm: heightMm })) })),
}

export const stepPictures: readonly StepPictureData[] = stepKinds.map((kind) => ({ kind, title: kind, description: kind, size: { heightMm: 30.65, thicknessMm: 10, lengthMm: 150 }, eachMm: 0.325, said: '30.65 × 10 × 150' }))

const frame = (title: string): SheetFrame => ({
  title, description: `${title} of an invented job`, heading: 'Pair of 30 for the grinder', under: `${title} · hardened and ground in pairs`, code: { label: 'job', value: 'QX7K42MP' },
  foot: [[{ label: 'Shop', value: 'Invented shop', share: 0.4 }, { label: 'Printed on', value: '2026-03-04', share: 0.22 }, { label: 'Wanted by', value: '', share: 0.22 }, { label: 'Initials', value: '', share: 0.16 }]],
})

const pictureOf = (kind: StepPictureData['kind']) => stepPicture(stepPictures.find((step) => step.kind === kind)!)

export const routeSheet: RouteSheetData = {
  ...frame('Route sheet'), cautionsHeading: 'Cautions', facts: [{ label: 'Bars', value: '2' }, { label: 'Steel', value: '1.2842' }, { label: 'Good for', value: 'grinding' }, { label: 'Hardness', value: '60 HRC' }],
  findings: { heading: 'To know before going on', lines: ['30 A1, edges: a bow of 0.12 asks for 0.22 on each side, there are 0.325: enough.'] },
  steps: [
    {
      heading: '1  Read after hardening', where: 'at the bench, 10 min', picture: pictureOf('read after hardening'), lines: ['Three hardness readings on an end, bow of edges and faces.'], computed: [], sizes: { heads: [], rows: [] },
      readings: { heads: ['HRC 1, at least 60', 'HRC 2', 'HRC 3', 'Bow of the edges, mm, at most 0.225'], rows: [{ name: '30 A1', cells: ['60.5', '61', '60.5', '0.12'] }, { name: '30 A2', cells: [] }] }, cautions: ['Not tempered, a bar can crack by itself.'],
      done: [{ label: 'Done on', value: '' }, { label: 'by', value: '' }, { label: 'hours', value: '' }],
    },
    {
      heading: '2  Grind the edges', where: 'at the surface grinder, 1.5 h', picture: pictureOf('grind the edges'), lines: ['Both mates as a pack, hollow edge down.'], computed: ['30 A1 and 30 A2: 20 + 10 passes a side until clean, 0.22 off each.'],
      sizes: { heads: ['for height', 'size after this step'], rows: [['30', '30 × 10 × 150']] }, readings: { heads: ['Height, mm 1', 'Height, mm 2'], rows: [{ name: '30 A1', cells: [] }] }, cautions: [],
      done: [{ label: 'Done on', value: '2026-03-04' }, { label: 'by', value: 'KM' }, { label: 'hours', value: '1.5' }],
    },
  ],
}

export const cutList: CutSheetData = {
  ...frame('Cut list'), notes: { heading: 'Cautions', lines: ['Fresh edges cut like knives.'] },
  parts: [
    { heading: 'C45, drawn, 30 × 10', lines: ['Kerf 1.5. 7000 mm of stock in all, less than 7000 mm cannot do.'], picture: (widthMm) => cutBarsDrawing(cutBars, widthMm), table: { heads: ['for height', 'piece', 'pieces', 'blanks in each'], rows: [['30', '303.5', '19', '2'], ['20', '151', '1', '1']] } },
    { heading: 'Plate, 260 wide', lines: ['Kerf 1.5; strips across the plate first.'], picture: (widthMm) => cutPlateDrawing(cutPlate, widthMm), table: { heads: ['strip', 'pieces in it'], rows: [['46', '2 × 125 × 46']] } },
  ],
}
