import Database from 'better-sqlite3'
import { join } from 'node:path'

export type DatabaseState = { readonly integrity: string; readonly strays: readonly unknown[]; readonly bars: ReadonlySet<string>; readonly halves: readonly string[] }

/** What lies in a data folder: whether it is sound, which bars are there, and which came without their height or event. */
export function databaseState(folder: string): DatabaseState {
  const raw = new Database(join(folder, 'shop.sqlite'), { timeout: 5000 })
  try {
    return {
      integrity: String(raw.pragma('integrity_check', { simple: true })),
      strays: raw.pragma('foreign_key_check') as unknown[],
      bars: new Set(raw.prepare<[], string>('select id from bar').pluck().all()),
      halves: raw.prepare<[], string>('select id from bar where id not in (select bar from reading) or id not in (select bar from event) union select record from change where kind = \'bar\' and record not in (select id from bar)').pluck().all(),
    }
  } finally {
    raw.close()
  }
}
