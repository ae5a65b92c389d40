import { describe, expect, test } from 'vitest'
import { certificate, checkSheet } from '#drafting/gallery/checks.ts'
import { faultsOf } from '#drafting/gallery/faults.ts'
import { certificatePages } from '#drafting/inspect/certificate.ts'
import { checkSheetPages } from '#drafting/inspect/check-sheet.ts'
import { paperEdgeMm, papers } from '#drafting/paper.ts'
import type { Scene, TextItem } from '#drafting/scene.ts'

const textsOf = (pages: readonly Scene[]): readonly TextItem[] => pages.flatMap(({ items }) => items.filter((item) => item.kind === 'text'))
const wordsOf = (pages: readonly Scene[]): string => textsOf(pages).map(({ text }) => text).join(' ').replace(/\s+/g, ' ')

/** Boxes with a bold number in their corner, in the order in which they are drawn, page by page. */
const numbersOf = (pages: readonly Scene[]): readonly number[] => textsOf(pages).flatMap(({ text, bold, sizeMm }) => (bold && sizeMm === 3.2 && /^\d+$/.test(text) ? [Number(text)] : []))

for (const paper of ['A4', 'Letter'] as const) {
  describe(paper, () => {
    test.each([[1, 3, 1], [2, 5, 2], [6, 9, 3], [40, 5, 1], [1, 60, 2]])('the check sheet of %i bars, %i stations, %i passes has its boxes in order', (bars, stations, passes) => {
      const data = checkSheet(bars, stations, passes), pages = checkSheetPages(data, paper)
      expect(numbersOf(pages)).toEqual(Array.from({ length: bars * stations * passes }, (_, i) => i + 1))
      pages.forEach((scene, at) => {
        expect(scene).toMatchObject({ ...papers[paper], fields: [] })
        expect(faultsOf(scene, paperEdgeMm)).toEqual([])
        expect(wordsOf([scene])).toContain(`${at + 1} / ${pages.length}`)
      })
      for (const line of [...data.howTo.lines, ...data.cautions.lines, '7KQ4M2XP', 'marked end', ...data.looks.ticks]) expect(wordsOf(pages)).toContain(line)
    })

    test.each([[1, 3], [2, 5], [12, 5], [1, 30]])('the certificate of %i bars with %i stations says all that was told', (bars, stations) => {
      const data = certificate(bars, stations), pages = certificatePages(data, paper), said = wordsOf(pages)
      for (const scene of pages) expect(faultsOf(scene, paperEdgeMm)).toEqual([])
      for (const { label, sizes, readings } of data.bars) {
        expect(said).toContain(label)
        expect(said).toContain(sizes)
        for (const row of readings.rows) for (const text of row) expect(said).toContain(text)
      }
      for (const block of [data.corrections!, data.findings, data.rule, data.notComputed]) for (const line of block.lines) expect(said).toContain(line)
      for (const words of [...data.taken.flatMap(({ label, value }) => [label, ...value.split(' ')]), ...data.sign, ...data.uncertainty!.notes]) expect(said).toContain(words)
      expect(pages.length).toBeGreaterThanOrEqual(bars > 2 ? 3 : 1)
    })
  })
}

test('prints are plain data: drawn alike from what was kept', () => {
  expect(certificatePages(JSON.parse(JSON.stringify(certificate())) as ReturnType<typeof certificate>, 'A4')).toEqual(certificatePages(certificate(), 'A4'))
  expect(checkSheetPages(JSON.parse(JSON.stringify(checkSheet())) as ReturnType<typeof checkSheet>, 'A4')).toEqual(checkSheetPages(checkSheet(), 'A4'))
})
