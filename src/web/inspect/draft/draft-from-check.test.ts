import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { InspectFacts } from '#engine/inspect/inspect-facts.ts'
import { checkFromDraft } from '#engine/inspect/read-draft.ts'
import { cellsOf } from '#engine/inspect/cells.ts'
import type { CheckForm, DraftFields } from '#model/check-draft.ts'
import { draftFromCheck } from '#web/inspect/draft/draft-from-check.ts'
import { newDraft, newForm } from '#web/inspect/draft/new-draft.ts'

const lengths: { readonly [bar: string]: number } = { A: 150, B: 120 }
const record = (id: string) => ({
  id, saw: {}, code: 'ABCD2345', name: id, thicknessMm: 8, thicknessStanding: 'marked' as const, lengthMm: lengths[id]!, matesId: null, slotId: null, where: { at: 'slot' as const }, note: '',
})
const facts: InspectFacts = {
  bars: ['A', 'B'].map(record), heights: () => null, instruments: [{ id: 'i', saw: {}, name: 'Indicator', figures: { is: 'indicator', resolutionUm: 1, limitUm: 1, repeatabilityUm: null }, dueOn: null, retired: false, note: '' }],
  limitsUm: { drilling: 25, milling: 10, fineMilling: 5, grinding: 2 }, today: '2026-03-31', tables: { plateFlatnessUm: () => null, blockLimitUm: () => null },
}
const bar = (id: string) => ({ bar: id, isNew: false, name: '', thickness: '', length: '' })

function filled(form: CheckForm, texts: readonly string[]): DraftFields {
  return { ...newDraft(form), typed: Object.fromEntries(cellsOf(form).map(({ key }, at) => [key, texts[at % texts.length]!])) }
}

// A property: what was typed comes back as it was typed, and says the same again.
test('a kept check opens as it was typed and, kept again, has the same readings', () => {
  const texts = { mm: ['+3', '-1,5', '0', '.5', '+4 µm'], in: ['.0001', '-.0002', '0', '0.00005"'] }, zeros = { mm: '25,000', in: '1 3/8' }
  fc.assert(fc.property(
    fc.constantFrom('mm' as const, 'in' as const), fc.constantFrom('compare' as const, 'turn-over' as const), fc.integer({ min: 2, max: 7 }), fc.constantFrom(1 as const, 2 as const), fc.integer({ min: 1, max: 3 }), fc.boolean(),
    (unit, method, stations, lines, repeats, both) => {
      const form = newForm(method, unit, { checks: [], instruments: [] }, { bars: both ? [bar('A'), bar('B')] : [bar('A')], stations, lines, repeats, zero: zeros[unit], instrumentId: 'i', closing: '0', temperature: '20,5' })
      const draft = filled(form, texts[unit]), body = checkFromDraft(draft, facts)
      const check = { ...body, id: 'k', person: 'KM', device: 'd', atIso: '2026-03-31T08:00:00.000Z' }
      const again = draftFromCheck(check, (id) => lengths[id] ?? null)
      expect(again).toEqual({ ...draft, form: { ...form, replaces: 'k' } })
      expect(checkFromDraft(again, facts)).toEqual({ ...body, replaces: 'k' })
    },
  ))
})

test('stations that were placed by hand stay where they were', () => {
  const form = newForm('compare', 'mm', { checks: [], instruments: [] }, { bars: [bar('A')], stations: 3, places: ['10', '70', '140'], zero: '25' })
  const body = checkFromDraft(filled(form, ['1', '2', '3']), facts)
  expect(draftFromCheck({ ...body, id: 'k', person: '', device: 'd', atIso: '2026-03-31T08:00:00.000Z' }, () => 150).form.places).toEqual(['10', '70', '140'])
})
