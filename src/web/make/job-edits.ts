import { fittedJaws, lowerJawMm } from '#engine/rack/vise-from.ts'
import type { JobFields, JobRecord, OrderForm, PlannedWith } from '#model/job-record.ts'
import type { LengthUnit } from '#model/length.ts'
import { wordLength } from '#model/length.ts'
import type { RouteKind } from '#model/route.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { newId } from '#web/new-id.ts'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { shopNow } from '#web/shop-store.ts'
import { unitsIn } from '#web/units.ts'
import { writeDeed, writeTyped } from '#web/write.ts'

/** An order nobody has typed into yet, its length under the jaws of the first vise there is. `asked`: what is known beforehand. */
export function newOrder(shop: ShopSnapshot, asked: Partial<OrderForm> = {}): JobFields {
  const units = unitsIn(shop, null), unit: LengthUnit = units.length, vise = shop.vises.find(({ retired }) => !retired)
  const say = (mm: number | undefined) => (mm === undefined ? '' : wordLength(mm, units))
  return {
    name: '', route: null, planned: null, bars: [], typed: {}, done: {}, tools: {}, state: 'open', draftId: null, note: '',
    form: {
      unit, heightsBy: 'list', heights: '', from: '', to: '', step: '', jawHeight: say(vise && lowerJawMm(fittedJaws(vise))), below: say(0.5), lowest: say(5), thickness: '', lengthBy: vise ? 'jaw' : 'length', length: '',
      jawWidth: say(vise?.jawWidthMm), under: say(1), pairs: '1', vises: '1', use: 'milling', hrc: '', due: null, faces: false, offer: { cost: '', days: '', match: '', parallel: '' }, ...asked,
    },
  }
}

export function beginJob(fields: JobFields): string {
  const record = newId()
  writeDeed({ edits: [{ kind: 'job', record, fields }] })
  return record
}

/** The job as it stands at this moment, with every key in it. */
const jobNow = (id: string): JobRecord | undefined => shopNow().shop?.jobs.find((job) => job.id === id)

export function changeOrder(id: string, part: Partial<OrderForm>): void {
  const now = jobNow(id)
  if (now) writeTyped({ kind: 'job', record: id, fields: { form: { ...now.form, ...part } } })
}

export function nameJob(id: string, name: string): void {
  writeTyped({ kind: 'job', record: id, fields: { name } })
}

/** A reading as typed; an empty one is none. */
export function typeReading(id: string, key: string, text: string): void {
  const now = jobNow(id)
  if (now) writeTyped({ kind: 'job', record: id, fields: { typed: withText(now.typed, key, text) } })
}

export function typeTool(id: string, key: string, text: string): void {
  const now = jobNow(id)
  if (now) writeTyped({ kind: 'job', record: id, fields: { tools: withText(now.tools, key, text) } })
}

/** Goes this way, with the shop as it stands today. */
export function chooseRoute(id: string, route: RouteKind, planned: PlannedWith): void {
  writeDeed({ edits: [{ kind: 'job', record: id, fields: { route, planned } }] })
}

/** Back to the order; what was read stays, in case it is the same way again. */
export function reopenOrder(id: string): void {
  writeDeed({ edits: [{ kind: 'job', record: id, fields: { route: null, planned: null } }] })
}

/** Put aside; it can be taken back as it was, also when the shop's list has let go of it. */
export function dropJob({ id, saw, state, ...rest }: JobRecord, called: string): void {
  writeDeed({ edits: [{ kind: 'job', record: id, fields: { state: 'dropped' } }] })
  offerUndo(`${called}: dropped.`, () => { writeDeed({ edits: [{ kind: 'job', record: id, saw: jobNow(id)?.saw ?? saw, fields: { ...rest, state } }] }) })
}

function withText(texts: { readonly [key: string]: string }, key: string, text: string): { [key: string]: string } {
  const { [key]: _before, ...rest } = texts
  return text === '' ? rest : { ...rest, [key]: text }
}
