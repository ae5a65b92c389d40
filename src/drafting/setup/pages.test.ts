import { describe, expect, test } from 'vitest'
import { chuckSheet, tableSheet } from '#drafting/gallery/beside-setup.ts'
import { setupSheet, viseCard } from '#drafting/gallery/sheets.ts'
import { textBoxOf } from '#drafting/lettering.ts'
import { paperEdgeMm, papers } from '#drafting/paper.ts'
import type { Scene, TextItem } from '#drafting/scene.ts'
import { besideSheetPages } from '#drafting/setup/beside-sheet.ts'
import { type SetupSheetData, setupSheetPages } from '#drafting/setup/setup-sheet.ts'
import { viseCardPages } from '#drafting/setup/vise-card.ts'

const textsOf = (scene: Scene): readonly TextItem[] => scene.items.filter((item) => item.kind === 'text')
const wordsOf = (pages: readonly Scene[]): string => pages.flatMap(textsOf).map(({ text }) => text).join(' ').replace(/\s+/g, ' ')

/** Lettering over other lettering, or past the edge a printer leaves white. */
function faultsOf(scene: Scene): readonly string[] {
  const boxes = textsOf(scene).map((text) => ({ text: text.text, ...textBoxOf(text) }))
  return boxes.flatMap((box, index) => [
    ...(box.x0Mm < paperEdgeMm || box.x1Mm > scene.widthMm - paperEdgeMm || box.y0Mm < paperEdgeMm || box.y1Mm > scene.heightMm - paperEdgeMm ? [`"${box.text}" at the edge`] : []),
    ...boxes.slice(index + 1).filter((other) => Math.min(box.x1Mm, other.x1Mm) - Math.max(box.x0Mm, other.x0Mm) > 0.01 && Math.min(box.y1Mm, other.y1Mm) - Math.max(box.y0Mm, other.y0Mm) > 0.01)
      .map((other) => `"${box.text}" over "${other.text}"`),
  ])
}

describe('the setup sheet', () => {
  for (const paper of ['A4', 'Letter'] as const) {
    test(`is one page of ${paper}, nothing over anything, with all that was told`, () => {
      const pages = setupSheetPages(setupSheet, paper)
      expect(pages).toHaveLength(1)
      expect(pages[0]).toMatchObject({ ...papers[paper], fields: [] })
      expect(faultsOf(pages[0]!)).toEqual([])
      const said = wordsOf(pages)
      for (const cell of Object.values(setupSheet.block)) expect(said).toContain(`${cell.label} ${cell.value}`.trim())
      for (const { label, value } of setupSheet.numbers) expect(said).toContain(`${label} ${value}`)
      for (const block of [setupSheet.bars, setupSheet.spacer!, setupSheet.test, setupSheet.cautions, setupSheet.notComputed]) {
        expect(said).toContain(block.heading)
        for (const line of block.lines) expect(said).toContain(line)
      }
      expect(said).toContain('Scale 1 : 1')
    })
  }

  test('goes on on a second page rather than leave a caution out', () => {
    const long: SetupSheetData = { ...setupSheet, cautions: { heading: 'Cautions', lines: Array.from({ length: 60 }, (_, i) => `Caution number ${i + 1}, which is long enough to be taken for a real one by the layout.`) } }
    const pages = setupSheetPages(long, 'Letter')
    expect(pages.length).toBeGreaterThan(1)
    for (const scene of pages) expect(faultsOf(scene)).toEqual([])
    for (const line of long.cautions.lines) expect(wordsOf(pages)).toContain(line)
  })

  test('keeps names apart that are as long as they may be', () => {
    const long = 'left over from the old grinding shop, no. 4'
    const block = Object.fromEntries(Object.entries(setupSheet.block).map(([name, { label }]) => [name, { label, value: long }])) as SetupSheetData['block']
    const data = { ...setupSheet, block, stand: long, numbers: setupSheet.numbers.map(({ value }) => ({ label: long, value })), picture: { ...setupSheet.picture, bars: setupSheet.picture.bars.map((bar) => ({ ...bar, label: long })) } }
    for (const scene of setupSheetPages(data, 'A4')) expect(faultsOf(scene)).toEqual([])
  })

  test('says what it is for in full, also in several lines', () => {
    const part = 'Housing of the feed gear, left hand, for the second table, revision 12 of the old print', operation = 'Face, drill and ream the four corner holes to size'
    for (const paper of ['A4', 'Letter'] as const) {
      const pages = setupSheetPages({ ...setupSheet, block: { ...setupSheet.block, part: { label: 'Part', value: part }, operation: { label: 'Operation', value: operation } } }, paper)
      expect(pages.flatMap(faultsOf)).toEqual([])
      expect(wordsOf(pages)).toContain(`${part} · ${operation}`)
      const { shop, date, initials, code } = setupSheet.block, foot = { shop, part: { label: 'Part', value: part }, operation: { label: 'Operation', value: operation }, date, initials }
      const beside = besideSheetPages({ title: '', description: '', heading: part, under: '2 vises', heads: ['Vise', 'Pair'], rows: [], blocks: [], code, foot }, [], paper)
      expect(beside.flatMap(faultsOf)).toEqual([])
      for (const said of [part, operation]) expect(wordsOf(beside)).toContain(said)
    }
  })

  test('is plain data: it is drawn alike from what was kept', () => {
    expect(setupSheetPages(JSON.parse(JSON.stringify(setupSheet)) as SetupSheetData, 'A4')).toEqual(setupSheetPages(setupSheet, 'A4'))
  })
})

describe('the vise card', () => {
  for (const paper of ['A4', 'Letter'] as const) {
    test(`shows every pair on ${paper}, with the notes on every strip, in figures to be read from a metre`, () => {
      const pages = viseCardPages(viseCard, paper)
      for (const scene of pages) expect(faultsOf(scene)).toEqual([])
      const said = wordsOf(pages)
      for (const row of viseCard.rows) {
        expect(said).toContain(`${row.pair} ${row.slot} ${row.from} ${row.grip} ${row.drill}`)
        for (const figure of pages.flatMap(textsOf).filter(({ text }) => text === row.from)) expect(figure.sizeMm).toBeGreaterThanOrEqual(7)
      }
      for (const scene of pages) expect(wordsOf([scene])).toContain(viseCard.notes[0])
    })
  }

  test('puts two strips on a page where the figures are short', () => {
    const short = { ...viseCard, headings: { pair: 'pair', slot: 'slot', from: 'from', grip: 'grip', drill: 'drill' }, rows: viseCard.rows.slice(0, 14).flatMap((row) => [row, row]).map((row, i) => ({ ...row, pair: String(i), from: '35', grip: '10', drill: '9' })) }
    expect(viseCardPages(short, 'A4')).toHaveLength(1)
    expect(faultsOf(viseCardPages(short, 'A4')[0]!)).toEqual([])
  })

  test('cuts a name that no page is wide enough for, and is there without any pair', () => {
    const long = { ...viseCard, rows: viseCard.rows.map((row) => ({ ...row, pair: `${row.pair} left over from the old grinding shop downstairs` })) }
    for (const scene of viseCardPages(long, 'A4')) expect(faultsOf(scene)).toEqual([])
    expect(wordsOf(viseCardPages(long, 'A4'))).toContain('…')
    expect(viseCardPages({ ...viseCard, rows: [] }, 'A4')).toHaveLength(1)
  })
})

describe('the sheets of table and chuck', () => {
  for (const paper of ['A4', 'Letter'] as const) for (const [name, sheet] of Object.entries({ table: tableSheet, chuck: chuckSheet })) {
    test(`${name}: one page of ${paper} to a named scale, nothing over anything`, () => {
      const pages = sheet(paper)
      expect(pages).toHaveLength(1)
      expect(pages[0]).toMatchObject(papers[paper])
      expect(faultsOf(pages[0]!)).toEqual([])
      expect(wordsOf(pages)).toMatch(/Scale \d/)
    })
  }
})
