import { expect, it } from 'vitest'
import { emptyCutForm, emptySetupForm } from '#engine/setup/form.ts'
import { textAt, withText } from '#web/setup/state/field-path.ts'

const form = { ...emptySetupForm('mm'), cuts: [emptyCutForm('end'), { ...emptyCutForm('slot'), rect: { x0: '1', x1: '2', y0: '3', y1: '4' } }], hollows: [{ x0: '5', x1: '', y0: '', y1: '' }] } as ReturnType<typeof emptySetupForm>

it.each(['height', 'wishes.grip', 'cuts[0].stock', 'cuts[1].rect.y1', 'hollows[0].x0'])('%s is written where it is read, and nothing else is', (path) => {
  const written = withText(form, path, '7/8')
  expect(textAt(written, path)).toBe('7/8')
  expect(withText(written, path, textAt(form, path))).toEqual(form)
  expect(written).not.toEqual(form)
})

it.each(['depth', 'cuts[0].diameter', 'cuts[9].stock', 'wishes', 'cuts[1].overJaw', '__proto__.x', ''])('%j is no field of this form', (path) => {
  expect(textAt(form, path)).toBe('')
  expect(withText(form, path, 'x')).toEqual(form)
})
