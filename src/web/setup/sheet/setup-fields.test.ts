import { expect, it } from 'vitest'
import { emptyCutForm, emptySetupForm } from '#engine/setup/form.ts'
import type { HoleForm, MilledForm } from '#model/setup-form.ts'
import { cutFields, hollowFields, partFields, wishFields } from '#web/setup/sheet/setup-fields.ts'
import { termsFor } from '#words/terms.ts'

const terms = termsFor('US'), paths = (fields: ReturnType<typeof partFields>) => fields.map(({ path }) => path)
const hole = (more: Partial<HoleForm>) => cutFields({ ...(emptyCutForm('hole') as HoleForm), ...more }, 1, 'mm', terms)

it('asks for the part in the order of the questions, for a round one only its diameter', () => {
  expect(paths(partFields(emptySetupForm('mm')))).toEqual(['height', 'offTop', 'between', 'along'])
  expect(partFields({ ...emptySetupForm('mm'), shape: 'round' }).map(({ label }) => label)).toEqual(['diameter', 'off the top', 'along'])
})

it('asks of a hole what its tool needs', () => {
  expect(paths(hole({}))).toEqual(['cuts[1].diameter', 'cuts[1].across', 'cuts[1].along', 'cuts[1].runThrough', 'cuts[1].pointAngle'])
  expect(paths(hole({ tool: 'tap', through: false })).slice(3)).toEqual(['cuts[1].depth', 'cuts[1].pitch', 'cuts[1].leadThreads'])
  expect(paths(hole({ tool: 'ream' })).slice(3)).toEqual(['cuts[1].runThrough'])
  expect(hole({ from: 'moving' })[1]!.label).toBe('from movable jaw')
})

it('asks for the four sides only where a place is given', () => {
  const slot = emptyCutForm('slot') as MilledForm, sides = { x0: '', x1: '', y0: '', y1: '' }
  expect(paths(cutFields(slot, 0, 'mm', terms))).toEqual(['cuts[0].depth', 'cuts[0].runThrough'])
  expect(paths(cutFields({ ...slot, rect: sides }, 0, 'mm', terms))).toHaveLength(6)
  expect(paths(hollowFields(2))).toEqual(['hollows[2].x0', 'hollows[2].x1', 'hollows[2].y0', 'hollows[2].y1'])
})

it('shows what counts while a field is empty, in the unit of the form', () => {
  const shown = (unit: 'mm' | 'in') => wishFields(unit).map(({ path, ifEmpty }) => [path, ifEmpty])
  // The defaults of the rules: 1 and .040 in clear of the jaws, 2 and 1/16 in between bars. Common practice, no source.
  expect(shown('mm')).toContainEqual(['wishes.air', '1'])
  expect(shown('in')).toContainEqual(['wishes.air', '0.04'])
  expect(shown('mm')).toContainEqual(['wishes.gap', '2'])
  expect(shown('in')).toContainEqual(['wishes.gap', '1/16'])
})
