import { describe, expect, it } from 'vitest'
import { emptyCutForm, emptySetupForm } from '#engine/setup/form.ts'
import type { HoleForm, SetupForm } from '#model/setup-form.ts'
import { inventedShop } from '#web/setup/invented-shop.ts'
import { benchFrom } from '#web/setup/view/bench.ts'
import { pictureFrom, withoutAnswer } from '#web/setup/view/picture-from.ts'
import { viewFrom } from '#web/setup/view/view-from.ts'

const bench = benchFrom(inventedShop([{ heightMm: 35, name: 'C', measuredUm: [1, 3] }, { heightMm: 30, name: 'B' }]), 'vise')!
const form = (fields: Partial<SetupForm>): SetupForm => ({ ...emptySetupForm('mm'), height: '19', offTop: '6', ...fields })
const hole = (fields: Partial<HoleForm>): HoleForm => ({ ...(emptyCutForm('hole') as HoleForm), diameter: '8.5', across: '19', ...fields })
const draw = (fields: Partial<SetupForm>, chosen: string | null = null) => pictureFrom(form(fields), viewFrom(form(fields), bench, chosen), bench, (bar) => `bar ${bar.id}`, 'mm')

describe('the picture', () => {
  it('is the vise with open sizes before anything is typed, and none of what is refused', () => {
    expect(draw({ height: '' })).toMatchObject({ fixedJawHeightMm: 45, heightMm: null, betweenJawsMm: null, seatMm: null, bars: [], cuts: [] })
    expect(draw({ height: 'x' })).toBeNull()
  })

  it('has the bars under the part, with grip and clearance as they are said', () => {
    const picture = draw({ between: '38', along: '60' })!
    expect(picture).toMatchObject({ heightMm: 19, betweenJawsMm: 38, alongJawsMm: 60, cuts: [{ kind: 'face', depthMm: 6 }] })
    expect(picture.bars).toMatchObject([{ label: 'bar 35-C-1', acrossMm: 6, lengthMm: 100, place: { yMm: 0 } }, { label: 'bar 35-C-2', place: { yMm: 32 } }])
    expect([picture.gripMm, picture.airMm]).toEqual([10, 3])
  })

  it('loses bars, grip and clearance, and nothing of vise and part, while there is no answer', () => {
    expect(withoutAnswer(draw({ between: '38', along: '60' })!)).toMatchObject({ heightMm: 19, betweenJawsMm: 38, cuts: [{ kind: 'face' }], bars: [], gripMm: null, airMm: null })
  })

  it('keeps each cut on the line of the screen, null while it is not filled in, and the face after them', () => {
    expect(draw({ between: '38', along: '60', cuts: [hole({ across: '' }), hole({ along: '30' })] })!.cuts).toMatchObject([null, { kind: 'hole', xMm: 30, yMm: 19 }, { kind: 'face' }])
  })

  it('shows a pair that does not serve where it would have to stand, in danger where it is fouled', () => {
    const low = draw({ between: '38', along: '60' }, 'on edge:30-B-1,30-B-2')!
    expect(low.bars).toMatchObject([{ place: { yMm: 0 }, fouled: false }, { place: { yMm: 32 } }])
    expect(low).toMatchObject({ seatMm: 30, airMm: -2 })
    const slot = { ...emptyCutForm('slot'), depth: '19', overJaw: false, rect: { x0: '-1', x1: '61', y0: '1', y1: '37' } } as SetupForm['cuts'][number]
    expect(draw({ between: '38', along: '60', cuts: [slot] }, 'on edge:35-C-1,35-C-2')!.bars).toMatchObject([{ fouled: true }, { fouled: true }])
  })
})
