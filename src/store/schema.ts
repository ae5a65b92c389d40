import type { RecordKind } from '#model/change.ts'
import type { FieldsOf } from '#model/record-fields.ts'

/** How a field lies in its column; `json` for lists and records, `yes-no` as 1 and 0. */
export type ColumnKind = 'text' | 'real' | 'yes-no' | 'json'

/** The column of every field of every kind of record, under the field's own name. */
export const columnsOf = {
  bar: {
    code: 'text', name: 'text', thicknessMm: 'real', thicknessStanding: 'text', lengthMm: 'real',
    matesId: 'text', slotId: 'text', where: 'json', note: 'text',
  },
  mates: { name: 'text', note: 'text' },
  slot: { code: 'text', name: 'text' },
  vise: {
    name: 'text', jawWidthMm: 'real', openingMm: 'real', jawSets: 'json', fittedJawSetId: 'text', retired: 'yes-no', note: 'text',
    measured: 'json',
  },
  part: { name: 'text', note: 'text', form: 'json', retired: 'yes-no' },
  setup: {
    title: 'text', operation: 'text', viseId: 'text', partId: 'text', form: 'json', bars: 'json', stand: 'text',
    usedAtIso: 'text', retired: 'yes-no',
  },
  shop: { name: 'text', units: 'json', paper: 'text', limitsUm: 'json', due: 'json', making: 'json', demo: 'yes-no' },
  person: { initials: 'text', units: 'json' },
  instrument: { name: 'text', figures: 'json', dueOn: 'text', retired: 'yes-no', note: 'text' },
  draft: { form: 'json', typed: 'json', looks: 'json', state: 'text', checkId: 'text' },
  outcome: { setupId: 'text', foretold: 'json', text: 'json', measuredUm: 'json', retired: 'yes-no', note: 'text' },
  machine: { name: 'text', kind: 'text', perHour: 'real', longestMm: 'real', kerfMm: 'real', sawnFaceMm: 'real', hardMilling: 'yes-no', spindle: 'json', retired: 'yes-no', note: 'text' },
  stock: {
    name: 'text', steel: 'text', condition: 'text', lengthMm: 'real', widthMm: 'real', thicknessMm: 'real', count: 'real', price: 'real', offcut: 'yes-no', form: 'text',
    retired: 'yes-no', note: 'text',
  },
  job: { name: 'text', form: 'json', route: 'text', planned: 'json', bars: 'json', typed: 'json', done: 'json', tools: 'json', state: 'text', draftId: 'text', note: 'text' },
} as const satisfies { readonly [Kind in RecordKind]: { readonly [Field in keyof FieldsOf[Kind]]: ColumnKind } }

/** On every row: whose shop, and who brought it, on which device. Rows that are only ever added are their own change. */
type Brought = { shop: string; person: string; device: string }

export type ChangeRow = Brought & { id: string; kind: string; record: string; atIso: string; fields: string }

/** A record as it stands. `saw`: the heads of each field; `clashes`: in how many fields two changes did not see each other. */
export type RecordRow = Brought & { id: string; change: string; saw: string; clashes: number }

type CheckRow = Brought & {
  id: string; method: string; replaces: string | null; zero: string | null; closing: string | null; temperature: string | null; took: string | null
  looks: string; asFound: number; note: string; atIso: string
}
type ReadingRow = Brought & {
  check: string; number: number; bar: string; station: number; xMm: number | null; line: number; face: string; text: string; heightMm: number
}
type EventRow = Brought & { id: string; bar: string; kind: string; undoes: string | null; note: string; atIso: string }
type UnservedRow = Brought & {
  id: string; question: string; day: string; viseId: string; form: string; lowMm: number; highMm: number; atIso: string
}
type ToldRow = Brought & { id: string; setupId: string | null; checkId: string | null; jobId: string | null; what: string; data: string; atIso: string }
type EnrolledRow = Brought & { id: string; name: string; token: string; atIso: string; revokedAtIso: string | null }
type InviteRow = Brought & { id: string; atIso: string; untilIso: string; usedBy: string | null }
type OwnerRow = Brought & { salt: string; hash: string; cost: string; atIso: string }
type ImportRow = Brought & { id: string; digest: string; answer: string; atIso: string }

export type AnyRecordRow = RecordRow & { readonly [field: string]: string | number | null }

export type Tables = { [Kind in RecordKind]: RecordRow & { [Field in keyof (typeof columnsOf)[Kind]]: string | number | null } } & {
  change: ChangeRow
  check: CheckRow
  reading: ReadingRow
  event: EventRow
  unserved: UnservedRow
  told: ToldRow
  import: ImportRow
  enrolled: EnrolledRow
  invite: InviteRow
  owner: OwnerRow
}
