import { expect, it } from 'vitest'
import { emptyCutForm, emptySetupForm } from '#engine/setup/form.ts'
import type { HoleForm, MilledForm, SetupForm } from '#model/setup-form.ts'
import { countedForm, fieldOnScreen } from '#engine/setup/counted-form.ts'

const hole = (fields: Partial<HoleForm>): HoleForm => ({ ...(emptyCutForm('hole') as HoleForm), ...fields })
const slot = (fields: Partial<MilledForm>): MilledForm => ({ ...(emptyCutForm('slot') as MilledForm), ...fields })
const form = (fields: Partial<SetupForm>): SetupForm => ({ ...emptySetupForm('mm'), height: '19', ...fields })

it('leaves out what lacks a size and keeps count of which line is which', () => {
  const counted = countedForm(form({ cuts: [hole({ diameter: '8' }), hole({ diameter: '8', across: '6' }), slot({}), { kind: 'end', side: 'left', stock: '2' }] }))
  expect(counted.lines).toEqual([1, 3])
  expect(counted.unfinished).toEqual([{ of: 'cut', line: 0 }, { of: 'cut', line: 2 }])
  expect(fieldOnScreen('cuts[1].stock', counted)).toBe('cuts[3].stock')
  expect(fieldOnScreen('between', counted)).toBe('between')
})

it('waits for the depth of a blind hole and the pitch of a tap, and never for its place along', () => {
  const sizes = { diameter: '8', across: '6' }
  const counted = countedForm(form({
    cuts: [hole({ ...sizes, through: false }), hole({ ...sizes, through: false, depth: '5' }), hole({ ...sizes, tool: 'tap' }), hole({ ...sizes, tool: 'tap', pitch: '1' }), hole({ ...sizes, tool: 'spot' })],
  }))
  expect(counted.lines).toEqual([1, 3])
})

it('waits for the size between the jaws where a hole is measured from the moving jaw', () => {
  const cuts = [hole({ diameter: '8', across: '6', from: 'moving' })]
  expect(countedForm(form({ cuts })).lines).toEqual([])
  expect(countedForm(form({ cuts, between: '38' })).lines).toEqual([0])
  expect(countedForm(form({ cuts, shape: 'round' })).lines).toEqual([0])
})

it('counts a cut whose place is half given as one without a place, and says that it is unfinished', () => {
  const counted = countedForm(form({ cuts: [slot({ depth: '3', rect: { x0: '0', x1: '', y0: '', y1: '' } })], hollows: [{ x0: '0', x1: '5', y0: '0', y1: '' }] }))
  expect(counted.form.cuts).toEqual([slot({ depth: '3', rect: null })])
  expect(counted.form.hollows).toEqual([])
  expect(counted.unfinished).toEqual([{ of: 'cut', line: 0 }, { of: 'hollow', line: 0 }])
})
