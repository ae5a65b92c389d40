import type { Page } from '@playwright/test'
import { expect } from './shop.ts'

const by = { person: 'KM', device: 'bench', atIso: '2026-03-01T08:00:00.000Z' }

/** Puts vises into the shop, all alike: jaws of 45, opening 100, nothing measured of them. Their names are their ids. */
export async function seedVises(page: Page, ids: readonly string[]): Promise<void> {
  const jaws = { id: 'hard', name: 'hard, smooth', fixedHeightMm: 45, movingHeightMm: 45, stepHeightMm: null, face: 'smooth' }
  const fields = (name: string) => ({ name, jawWidthMm: 125, openingMm: 100, jawSets: [jaws], fittedJawSetId: 'hard', retired: false, note: '', measured: null })
  const changes = ids.map((id) => ({ id: `seed-${id}`, kind: 'vise', record: id, ...by, fields: Object.fromEntries(Object.entries(fields(id)).map(([field, value]) => [field, { value, saw: [] }])) }))
  const answer = await page.request.post('/api/deeds', { data: { changes, checks: [], events: [] } })
  expect(answer.ok(), await answer.text()).toBe(true)
}
