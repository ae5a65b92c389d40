import { createHash, type Hash } from 'node:crypto'
import { canonical } from '#model/canonical.ts'
import { type Fact, Refusal } from '#model/refusal.ts'
import { columnsOf, type Tables } from '#store/schema.ts'
import { atOneMoment, inTransaction, type Store } from '#store/store.ts'

/** How far a move has come, told after each portion of rows. */
export type MoveProgress = { readonly table: string; readonly rows: number; readonly of: number }
/** What was carried over: rows of each table, and the sum over all of them, which was found the same on both sides. */
export type Moved = { readonly rows: { readonly [table: string]: number }; readonly sum: string }

type Row = { readonly [column: string]: string | number | null }
type Table = keyof Tables

/** Every table of a shop, with the columns that name a row in it besides the shop. */
const keys: { readonly [table in Table]: readonly string[] } = {
  ...Object.fromEntries(Object.keys(columnsOf).map((kind) => [kind, ['id']])) as { [kind in keyof typeof columnsOf]: string[] },
  change: ['id'], check: ['id'], reading: ['check', 'number'], event: ['id'], unserved: ['id'], told: ['id'], import: ['id'], enrolled: ['id'], invite: ['id'], owner: [],
}
const tables = Object.keys(keys) as Table[]
const rowsAtOnce = 500

/**
 * Carries a shop from one database into an empty shop of another, row by row as they lie, all or nothing. Then both are read
 * through once more and summed up: the move stands only if the sums are the same.
 *
 * @throws Refusal `move-not-empty`, `move-differs` (the shop was written into meanwhile, or did not come over as it was); nothing was moved
 */
export async function moveShop(from: Store, to: Store, tell: (progress: MoveProgress) => void): Promise<Moved> {
  return await inTransaction(to, async (tx) => {
    await makeRoom(tx)
    const rows: { [table: string]: number } = {}
    for (const table of tables) {
      const of = await countOf(from, table)
      rows[table] = 0
      for await (const some of portionsOf(from, table)) {
        await tx.db.insertInto(table as 'bar').values(some.map((row) => ({ ...row, shop: tx.shop })) as unknown as Tables['bar'][]).execute()
        rows[table] += some.length
        tell({ table, rows: rows[table], of })
      }
    }
    const [sum, before] = [await sumOf(tx), await atOneMoment(from, sumOf)]
    if (sum !== before) throw new Refusal('move-differs', { given: sum, needed: before })
    return { rows, sum }
  })
}

/** SHA-256 over every row of a shop, table by table, in the order of their names, whatever the shop is called. */
export async function sumOf(store: Store): Promise<string> {
  const hash: Hash = createHash('sha256')
  for (const table of tables) {
    hash.update(`${table}\n`)
    for await (const some of portionsOf(store, table)) for (const { shop: _shop, ...row } of some) hash.update(`${canonical(row as Fact)}\n`)
  }
  return hash.digest('hex')
}

/** A shop that was only just begun makes way. */
async function makeRoom(tx: Store): Promise<void> {
  for (const table of tables) {
    const begun = { change: 'first-start', shop: 'shop' }[table as string]
    const rows = (await portionsOf(tx, table).next()).value ?? []
    if (rows.some((row) => row['id'] !== begun)) throw new Refusal('move-not-empty', { shop: tx.shop, given: table })
    if (rows.length > 0 && table === 'shop' && rows[0]!['change'] !== 'first-start') throw new Refusal('move-not-empty', { shop: tx.shop, given: table })
  }
  for (const table of ['change', 'shop'] as const) await tx.db.deleteFrom(table).where('shop', '=', tx.shop).execute()
}

async function countOf({ db, shop }: Store, table: Table): Promise<number> {
  return Number((await db.selectFrom(table as 'bar').select((of) => of.fn.countAll().as('rows')).where('shop', '=', shop).executeTakeFirstOrThrow()).rows)
}

async function* portionsOf({ db, shop }: Store, table: Table): AsyncGenerator<readonly Row[], undefined> {
  const [first, second] = keys[table] as readonly 'id'[]
  let last: Row | null = null
  for (;;) {
    const after: Row | null = last
    const rows = await db.selectFrom(table as 'bar').selectAll().where('shop', '=', shop)
      .$if(after !== null && first !== undefined, (query) => query.where((is) => second === undefined
        ? is(first!, '>', after![first!] as string)
        : is.or([is(first!, '>', after![first!] as string), is.and([is(first!, '=', after![first!] as string), is(second, '>', after![second] as string)])])))
      .$if(first !== undefined, (query) => query.orderBy(first!)).$if(second !== undefined, (query) => query.orderBy(second!))
      .limit(rowsAtOnce).execute() as unknown as readonly Row[]
    if (rows.length > 0) yield rows
    if (rows.length < rowsAtOnce || first === undefined) return
    last = rows.at(-1)!
  }
}
