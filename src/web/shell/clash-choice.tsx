import { useEffect, useState } from 'react'
import type { Where } from '#model/bar-record.ts'
import { canonical } from '#model/canonical.ts'
import type { HistoryEntry } from '#model/history.ts'
import type { Fact } from '#model/refusal.ts'
import { ask } from '#web/api.ts'
import type { OpenClash } from '#web/keep/open-clashes.ts'
import { sayWhere } from '#web/rack/say-where.ts'
import { nameOfRecord, plain } from '#web/shell/say-entry.ts'
import { useShop } from '#web/shop-store.ts'
import { type Edit, writeDeed } from '#web/write.ts'

type Side = { readonly id: string; readonly person: string; readonly value: Fact; readonly stands: boolean }

/** Two people changed one field without seeing each other: both values, one tap to choose. What is chosen follows both; `also`: records that clash alike. */
export function ClashChoice({ clash: { kind, record, field }, also = [] }: { readonly clash: OpenClash; readonly also?: readonly string[] }) {
  const { shop } = useShop()
  const [sides, setSides] = useState<readonly Side[] | 'asking' | 'away'>('asking')
  useEffect(() => {
    ask<readonly HistoryEntry[]>(`/api/history/${kind}/${record}`).then((history) => setSides(sidesOf(history, field)), () => setSides('away'))
  }, [kind, record, field])
  const take = (value: Fact) => writeDeed({ edits: [record, ...also].map((one) => ({ kind, record: one, fields: { [field]: value } }) as Edit) })
  return (
    <section className="boxed">
      <h3 className="name-text">{nameOfRecord(kind, record, shop)}: {plain(field)}</h3>
      <p>Changed by two people who did not see each other. Tap the one that is right.</p>
      {sides === 'away' ? <p className="small">The shop’s server holds both values and does not answer just now.</p> : null}
      <div className="actions">
        {typeof sides === 'string' ? null : sides.map(({ id, person, value, stands }) => (
          <button key={id} type="button" className="action name-text" onClick={() => take(value)}>{field === 'where' ? sayWhere(value as Where, shop) : said(value, sides.map((side) => side.value))} ({person || '–'}{stands ? ', stands now' : ''})</button>
        ))}
      </div>
    </section>
  )
}

function sidesOf(history: readonly HistoryEntry[], field: string): readonly Side[] {
  return history.flatMap((entry) => {
    if (entry.what !== 'change') return []
    const side = entry.fields[field]
    return side === undefined || side.fate === 'followed' ? [] : [{ id: entry.id, person: entry.person, value: side.value, stands: side.fate === 'stands' }]
  })
}

/** Of a value with many parts, such as the readings of a check, those in which the sides differ. */
function said(value: Fact, all: readonly Fact[]): string {
  if (typeof value === 'string') return value
  if (!isRecord(value) || !all.every(isRecord)) return JSON.stringify(value)
  const keys = [...new Set(all.flatMap((side) => Object.keys(side)))].filter((key) => new Set(all.map((side) => canonical(side[key] ?? null))).size > 1)
  return keys.map((key) => { const part = value[key] ?? '–'; return typeof part === 'string' ? part : `${plain(key)} ${JSON.stringify(part)}` }).join(', ')
}

const isRecord = (value: Fact): value is { readonly [name: string]: Fact } => typeof value === 'object' && value !== null && !Array.isArray(value)
