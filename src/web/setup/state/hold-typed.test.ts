import { expect, it } from 'vitest'
import { emptySetupForm } from '#engine/setup/form.ts'
import { setupFormSchema } from '#model/setup-form.ts'
import { openPart } from '#web/setup/saved/open-setup.ts'
import { type HoldField, holdTyped } from '#web/setup/state/hold-typed.ts'
import { reduceSetup } from '#web/setup/state/reduce-setup.ts'
import { newState, type SetupState } from '#web/setup/state/setup-state.ts'

const type = (state: SetupState, field: HoldField, text: string, viseId = 'v1') => reduceSetup(state, { do: 'type hold', viseId, field, text })

it('a clamp stays with its vise, cutter and drill with the device, and what is of the part with the form', () => {
  const state = type(type(type(type(newState('mm'), 'torqueNm', '60'), 'forceN', '9000', 'v2'), 'diameter', '16'), 'kd', '24000')
  expect(holdTyped(state, 'v1')).toMatchObject({ torqueNm: '60', forceN: '', diameter: '16', kd: '24000' })
  expect(holdTyped(state, 'v2')).toMatchObject({ torqueNm: '', forceN: '9000', diameter: '16', kd: '24000' })
  expect(state.form).toEqual({ ...emptySetupForm('mm'), hold: { group: '', kd: '24000', yieldMPa: '', width: '', drill: '' } })
})

it('another part is opened with its own material beside the same vise, cutter and drill, and so is what undoes it', () => {
  const before = type(type(type(newState('mm'), 'torqueNm', '60'), 'diameter', '16'), 'yieldMPa', '350')
  const part = openPart({ id: 'p1', saw: {}, name: 'Block', note: '', form: { ...emptySetupForm('in'), height: '1', hold: { group: '2', kd: '', yieldMPa: '', width: '', drill: '' } }, retired: false }, 'v1')
  const opened = reduceSetup(before, { do: 'put', state: part })
  expect(holdTyped(opened, 'v1')).toMatchObject({ torqueNm: '60', diameter: '16', group: '2', yieldMPa: '' })
  expect([opened.form.unit, opened.atHand.unit]).toEqual(['in', 'mm'])
  expect(holdTyped(reduceSetup(type(opened, 'teeth', '4'), { do: 'put', state: before }), 'v1')).toMatchObject({ teeth: '4', yieldMPa: '350' })
})

it('a form is as it was once the last text is taken out again, and the choice looked at stays', () => {
  const looking: SetupState = { ...newState('mm'), chosen: 'on edge:a,b' }, typed = type(looking, 'kd', '24000')
  expect(typed.chosen).toBe('on edge:a,b')
  expect(type(typed, 'kd', '')).toEqual(looking)
})

it('a form is kept with it and without, and with nothing else under it', () => {
  const earlier = emptySetupForm('mm'), hold = { group: '2', kd: '24 000?', yieldMPa: '', width: '1 3/', drill: '' }
  expect('hold' in earlier).toBe(false)
  expect(setupFormSchema.parse(earlier)).toEqual(earlier)
  expect(setupFormSchema.parse({ ...earlier, hold })).toEqual({ ...earlier, hold })
  for (const wrong of [{}, { ...hold, kd: 24_000 }, { ...hold, torqueNm: '60' }, { ...hold, kd: '9'.repeat(41) }]) expect(setupFormSchema.safeParse({ ...earlier, hold: wrong }).success).toBe(false)
})
