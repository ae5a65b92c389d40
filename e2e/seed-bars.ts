import type { Page } from '@playwright/test'
import { expect } from './shop.ts'

/** A bar that was read on the plate against a block: µm above it, at even places along. */
export type SeededBar = { readonly id: string; readonly um: readonly number[]; readonly blockMm?: number; readonly matesId?: string | null; readonly thicknessMm?: number }

const by = { person: 'KM', device: 'bench', atIso: '2026-03-02T08:00:00.000Z' }
let made = 0
const newId = () => `seed${(made += 1)}`
const letters = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ'
const codeOf = (number: number) => Array.from({ length: 8 }, (_, at) => letters[Math.floor(number / 32 ** (7 - at)) % 32]).join('')

/** Puts measured bars into the shop, all out of one check with an indicator that steps `resolutionUm`. */
export async function seedBars(page: Page, bars: readonly SeededBar[], resolutionUm = 0.1): Promise<void> {
  const first = (kind: string, record: string, fields: object) => ({ id: newId(), kind, record, ...by, fields: Object.fromEntries(Object.entries(fields).map(([field, value]) => [field, { value, saw: [] }])) })
  const mates = [...new Set(bars.flatMap(({ matesId }) => matesId ?? []))]
  const deed = {
    changes: [
      ...mates.map((id) => first('mates', id, { name: id, note: '' })),
      ...bars.map(({ id, matesId = null, thicknessMm = 8 }) => first('bar', id, {
        code: codeOf((made += 1)), name: id, thicknessMm, thicknessStanding: 'measured', lengthMm: 100, matesId, slotId: null, where: { at: 'slot' }, note: '',
      })),
    ],
    checks: [{
      id: newId(), ...by, method: 'compare', replaces: null, closing: null, temperature: null, looks: [], asFound: false, note: '',
      zero: { on: 'block', heightMm: 25, text: '25' },
      took: {
        instrument: { id: null, name: 'probe', dueOn: null }, plate: null, blocks: null,
        readWith: { method: 'compare', resolutionUm, limitUm: null, repeatabilityUm: 0.2, plateFlatnessUm: null, blockLimitUm: 0.3, blockUUm: null, betweenC: null, awayC: null, expansionPerC: 11.5e-6, expansionApartPerC: 1e-6 },
      },
      readings: bars.flatMap(({ id, um, blockMm = 25 }) => um.map((one, station) => ({
        bar: id, station, xMm: 5 + (90 * station) / (um.length - 1), line: 0, face: 'A', text: `${one}`, heightMm: blockMm + one / 1000,
      }))),
    }],
    events: bars.map(({ id }) => ({ id: newId(), bar: id, kind: 'added', undoes: null, note: '', ...by, atIso: '2026-03-01T08:00:00.000Z' })),
  }
  const answer = await page.request.post('/api/deeds', { data: deed })
  expect(answer.ok(), await answer.text()).toBe(true)
}
