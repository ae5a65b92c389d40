import { barsFrom } from '#engine/rack/bar-from.ts'
import { isOrphan } from '#engine/rack/mates-now.ts'
import type { Bar } from '#model/bar.ts'
import type { BarRecord } from '#model/bar-record.ts'
import { recordsOf } from '#store/records.ts'
import { atOneMoment, type Store } from '#store/store.ts'
import { rackFactsOf } from '#tasks/rack/rack-facts.ts'

/** A bar of the rack with what a list says of it; `mates` and `slot` by their names. `orphan`: its mates are written down, and are no longer mates. */
export type RackLine = Pick<Bar, 'id' | 'heightMm' | 'standing' | 'thicknessMm' | 'thicknessStanding' | 'lengthMm' | 'trust'>
  & Pick<BarRecord, 'code' | 'name' | 'note' | 'where'>
  & { readonly matesId: string | null; readonly mates: string | null; readonly slot: string | null; readonly orphan: boolean }

/** What to list; left out: everything but what is gone. `find` looks into name, code, mates, slot and note. */
export type RackFilter = {
  readonly heightMm?: number
  readonly thicknessMm?: number
  readonly lengthMm?: number
  readonly find?: string
  readonly trust?: Bar['trust']
  readonly gone?: boolean
}

/** A bar measured as 35.003 is found as 35. */
const alikeMm = 0.05

/** The bars of the shop, lowest first (to a tenth, so that mates stand together), then thinnest, then by mates and name. */
export async function listRack(store: Store, filter: RackFilter = {}): Promise<RackLine[]> {
  const lines = await atOneMoment(store, async (tx) => {
    const facts = await rackFactsOf(tx), records = facts.bars, bars = barsFrom(facts, { viseId: null })
    const recordAt = new Map(records.map((record) => [record.id, record]))
    const matesAt = namesOf(await recordsOf(tx, 'mates')), slotAt = namesOf(await recordsOf(tx, 'slot'))
    return bars.map((bar): RackLine => {
      const { code, name, note, where, matesId, slotId } = recordAt.get(bar.id)!
      const { id, heightMm, standing, thicknessMm, thicknessStanding, lengthMm, trust } = bar
      return {
        orphan: isOrphan(bar, matesId),
        id, code, name, heightMm, standing, thicknessMm, thicknessStanding, lengthMm, trust, note, where,
        matesId, mates: matesAt.get(matesId ?? '') ?? null, slot: slotAt.get(slotId ?? '') ?? null,
      }
    })
  })
  return lines.filter((line) => isWanted(line, filter)).sort(inOrder)
}

function isWanted(line: RackLine, { heightMm, thicknessMm, lengthMm, find, trust, gone }: RackFilter): boolean {
  const alike = (size: number, wanted: number | undefined) => wanted === undefined || Math.abs(size - wanted) <= alikeMm
  const text = [line.name, line.code, line.mates, line.slot, line.note].join('\n').toLowerCase()
  return alike(line.heightMm, heightMm) && alike(line.thicknessMm, thicknessMm) && alike(line.lengthMm, lengthMm)
    && (find === undefined || text.includes(find.trim().toLowerCase()))
    && (trust === undefined ? gone === true || line.trust !== 'gone' : line.trust === trust)
}

function inOrder(a: RackLine, b: RackLine): number {
  const tenths = ({ heightMm }: RackLine) => Math.round(heightMm * 10)
  const sizes = tenths(a) - tenths(b) || a.thicknessMm - b.thicknessMm || a.lengthMm - b.lengthMm
  return sizes || inWords(a.mates ?? '', b.mates ?? '') || inWords(a.name, b.name) || inWords(a.id, b.id)
}

const inWords = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1)
const namesOf = (records: readonly { readonly id: string; readonly name: string }[]) => new Map(records.map(({ id, name }) => [id, name]))
