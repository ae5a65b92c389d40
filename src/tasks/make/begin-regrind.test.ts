import { afterEach, beforeEach, expect, test } from 'vitest'
import { openExample } from '#store/example-store.ts'
import { recordOf } from '#store/records.ts'
import type { Store } from '#store/store.ts'
import { beginRegrind } from '#tasks/make/begin-regrind.ts'
import { jobOfShop, listJobs } from '#tasks/make/jobs-of-shop.ts'
import { makerFor } from '#tasks/maker.ts'
import { listRack } from '#tasks/rack/list-rack.ts'
import { regrindBars } from '#tasks/rack/work-of-rack.ts'
import { loadDemo } from '#tasks/shop/load-demo.ts'

let store: Store
beforeEach(async () => { store = await openExample() })
afterEach(() => store.close())

const by = makerFor('KM', 'bench')
const refusal = (run: Promise<unknown>) => run.then(() => null, (error: unknown) => error)

test('bars of the demo shop are kept as a job that comes to the height the rack worked out, and cannot be begun twice', async () => {
  await loadDemo(store)
  const codes = (await listRack(store)).filter(({ standing, where, mates }) => standing === 'measured' && where.at === 'slot' && mates !== null).slice(0, 2).map(({ code }) => code)
  const { regrind } = await regrindBars(store, { bars: codes, faces: 2, cleanUpUm: 15 }), id = await beginRegrind(store, { bars: codes, faces: 2, cleanUpUm: 15, use: 'grinding' }, by)
  const { job, view } = await jobOfShop(store, id)
  expect(view.plan.made.map(({ heightMm }) => heightMm)).toEqual([regrind.newHeightMm, regrind.newHeightMm])
  expect([job.form.use, job.route, view.plan.next]).toEqual(['grinding', 'regrind', 'clean and demagnetise'])
  expect((await listJobs(store)).find((line) => line.id === id)).toMatchObject({ bars: 2, done: 0, steps: 9, refused: null })
  expect(await refusal(beginRegrind(store, { bars: codes.slice(1), use: 'milling' }, by))).toMatchObject({ code: 'bar-in-job', facts: { job: job.name } })
  expect((await recordOf(store, 'job', id)).state).toBe('open')
  expect(await refusal(beginRegrind(store, { bars: ['NOBODY22'], use: 'milling' }, by))).toMatchObject({ code: 'bar-not-known' })
})
