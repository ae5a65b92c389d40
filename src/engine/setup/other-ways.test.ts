import { expect, it } from 'vitest'
import { emptySetupForm, questionFrom } from '#engine/setup/form.ts'
import { otherWaysOf } from '#engine/setup/other-ways.ts'
import { windowOf } from '#engine/setup/window.ts'
import type { Rejection } from '#model/setup.ts'
import type { SetupForm } from '#model/setup-form.ts'

const vise = { jawHeightMm: 45, openingMm: 100 }
const ask = (fields: Partial<SetupForm>) => questionFrom({ ...emptySetupForm('mm'), height: '19', offTop: '6', ...fields }, vise)
const tooLow = (seatMm: number, more: Partial<Rejection> = {}): Rejection => ({ bars: [`${seatMm}a`, `${seatMm}b`], stand: 'on edge', seatMm, gripMm: 45 - seatMm, airMm: null, reasons: ['too-low'], ...more })
const ways = (fields: Partial<SetupForm>, nearMisses: readonly Rejection[], steps: Parameters<typeof otherWaysOf>[3] = []) => otherWaysOf(ask(fields), windowOf(ask(fields)), nearMisses, steps)

// By hand, common practice, no source: jaws 45, part 19, 6 off, 1 clear → lowest 45 + 6 + 1 − 19 = 33; grip auto 0.6 · 13 = 7.8 → highest 37.2.
it('offers adjustable parallels inside the window and the next lower pair on strips that make up the rest', () => {
  expect(ways({}, [tooLow(25), tooLow(30), tooLow(32, { reasons: ['too-low', 'fouled'] }), tooLow(31, { stand: 'single' })])).toEqual([
    { code: 'adjustable-parallels', facts: { lowMm: 33, highMm: expect.closeTo(37.2, 9) } },
    { code: 'pair-on-strips', facts: { bars: ['30a', '30b'], fromMm: 3, toMm: expect.closeTo(7.2, 9) } },
  ])
})

it('puts nothing on strips that is to be ground or fine milled', () => {
  for (const use of ['grinding', 'fine milling'] as const) expect(ways({ use }, [tooLow(30)]).map(({ code }) => code)).toEqual(['adjustable-parallels'])
})

it('offers nothing for no height at all, and no two parallels under a round part', () => {
  expect(ways({ height: '4', offTop: '3', wishes: { ...emptySetupForm('mm').wishes, grip: '5' } }, [tooLow(30)])).toEqual([])
  expect(ways({ shape: 'round', height: '25' }, []).map(({ code }) => code)).not.toContain('adjustable-parallels')
})

it('offers a step that lies inside the window of its own jaws, and none where something comes out below', () => {
  const step = (stepMm: number, jawHeightMm = 45) => ({ name: `step ${stepMm}`, stepMm, vise: { ...vise, jawHeightMm } })
  // With jaws of 50 the window is 38 to 42.2.
  expect(ways({}, [], [step(32.9), step(33), step(37.2), step(37.3), step(40, 50)]).flatMap(({ facts }) => facts['jaws'] ?? [])).toEqual(['step 33', 'step 37.2', 'step 40'])
  const drilled = { height: '40', offTop: '', cuts: [{ kind: 'hole', tool: 'drill', diameter: '16', across: '10', from: 'fixed', along: '', through: true, depth: '', runThrough: '', pointAngle: '', pitch: '', leadThreads: '' }] } as const
  expect(ways({ ...drilled, cuts: [...drilled.cuts] }, [], [step(20)]).map(({ code }) => code)).toEqual(['adjustable-parallels'])
})
