import { expect, test } from 'vitest'
import { attempt } from '#model/attempt.ts'
import { Refusal } from '#model/refusal.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { plainUnits } from '#words/terms.ts'
import { onTable } from '#web/setup/table/on-table.ts'
import { barsFor, emptyTable, type TableTexts, tableAnswered } from '#web/setup/table/table-asked.ts'

const plate: TableTexts = { ...emptyTable, across: '100', along: '120', height: '20', thickness: '8' }
const hole = { diameter: '10', across: '15', along: '60', through: true, depth: '' }
const said = (texts: Partial<TableTexts>): string => {
  const told = attempt(() => [barsFor({ ...plate, ...texts }, 'mm'), tableAnswered({ ...plate, ...texts }, 'mm')])
  return told instanceof Refusal ? sayRefusal(onTable(told), plainUnits) : ''
}

test.each<readonly [Partial<TableTexts>, string]>([
  [{ across: 'wide' }, 'Part, across: \'wide\''], [{ along: '-5' }, 'Part, along: −5'], [{ height: '0' }, 'Part height: 0'],
  [{ holes: [{ ...hole, across: '150' }] }, 'Hole 1, from near edge: at 150'], [{ holes: [hole, { ...hole, along: 'far' }] }, 'Hole 2, from left end: \'far\''],
  [{ straps: [{ along: '', across: 'x' }] }, 'Strap 1, from near edge: \'x\''], [{ inboard: 'y' }, 'In from the edge: \'y\''],
])('%o is refused at its field of the table', (texts, begins) => {
  expect(said(texts).slice(0, begins.length)).toBe(begins)
})

test('other fields keep their names', () => {
  const refusal = new Refusal('not-a-number', { field: 'wishes.holeAirMm', given: 'x', needed: 'number' })
  expect(onTable(refusal)).toBe(refusal)
})
