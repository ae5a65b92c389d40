import { useEffect, useState } from 'react'
import { type Facts, Refusal } from '#model/refusal.ts'
import { ask } from '#web/api.ts'
import { StatusLine } from '#web/parts/status-line.tsx'
import { useAsOwner } from '#web/shop/access/as-owner.ts'
import { OwnerSheet } from '#web/shop/access/owner-sheet.tsx'
import { sayAge, saySize } from '#web/shop/backups/say-backup.ts'
import { useUnits } from '#web/units.ts'
import { sayRefusal } from '#words/say-refusal.ts'

type Backup = { readonly name: string; readonly atIso: string; readonly bytes: number }
type Refused = { readonly refused: string; readonly facts: Facts }
type Listed = {
  readonly backups: readonly Backup[]
  readonly folder: string | null
  readonly everyHours: number
  readonly failed: { readonly atIso: string; readonly refused: string | null; readonly facts: Facts } | null
}
type Heard = Listed & { readonly heardMs: number }
/** What came of looking a backup through anew, by its name. */
type Found = { readonly [name: string]: string }

const shown = 5

const heard = async (): Promise<Heard> => ({ ...await ask<Listed>('/api/backups'), heardMs: Date.now() })

/** The copies of the whole shop, for the owner: what there is, one more now, and how one is put in the shop's place. */
export function Backups() {
  const units = useUnits(), [listed, setListed] = useState<Heard | null>(null), [all, setAll] = useState(false), [busy, setBusy] = useState(false)
  const [done, setDone] = useState<string | null>(null), [found, setFound] = useState<Found>({})
  const { attempt, waiting, giveUp, trouble } = useAsOwner()
  const list = () => heard().then(setListed)
  // Who is not the owner is not asked for a passphrase before wanting to see them.
  useEffect(() => { void heard().then(setListed, () => undefined) }, [])
  const backUp = () => attempt(async () => {
    setBusy(true)
    setDone(null)
    try {
      const { bytes } = await ask<Backup>('/api/backups', {})
      setDone(`A backup of ${saySize(bytes)} is made, and was found sound.`)
    } finally { setBusy(false); await list().catch(() => undefined) }
  })
  const check = (name: string) => attempt(async () => {
    const { amiss } = await ask<{ readonly amiss: Refused | null }>(`/api/backups/${name}/check`, {})
    setFound((before) => ({ ...before, [name]: amiss === null ? 'found sound just now' : sayRefusal(new Refusal(amiss.refused, amiss.facts), units) }))
  })
  return (
    <section>
      <h2>Backups</h2>
      {listed === null ? (
        <>
          <p>Copies of the whole shop, for the owner.</p>
          <div className="actions"><button type="button" className="action" onClick={() => attempt(list)}>See the backups</button></div>
        </>
      ) : (
        <>
          <p>
            {listed.everyHours === 0 ? 'None is made by itself: the server was started so.' : `One is made when the last is ${listed.everyHours} h old.`}{' '}
            {listed.folder === null ? 'They lie on the machine the shop runs on.' : <>They lie in <code className="place">{listed.folder}</code>; a disk of their own outlives the one of the shop.</>}
          </p>
          {listed.failed ? <StatusLine danger>The last try, {sayAge(listed.failed.atIso, listed.heardMs)}, made none: {listed.failed.refused === null ? 'the reason is in the server’s log.' : sayRefusal(new Refusal(listed.failed.refused, listed.failed.facts), units)}</StatusLine> : null}
          {listed.backups.length === 0 ? <p>There is none yet.</p> : (
            <ul className="rows">{(all ? listed.backups : listed.backups.slice(0, shown)).map(({ name, atIso, bytes }) => (
              <li key={name} className="vise-row">
                <span className="vise-link">
                  <strong>{sayAge(atIso, listed.heardMs)}, {saySize(bytes)}</strong>
                  <span className="place">{name}</span>
                  <span>{found[name] ?? 'found sound when it was made'}</span>
                </span>
                <button type="button" className="press" aria-label={`Look ${name} through`} onClick={() => check(name)}>Check</button>
              </li>
            ))}</ul>
          )}
          <div className="actions">
            <button type="button" className="action" disabled={busy} onClick={backUp}>{busy ? 'Backing up …' : 'Back up now'}</button>
            {!all && listed.backups.length > shown ? <button type="button" className="action" onClick={() => setAll(true)}>See all {listed.backups.length}</button> : null}
          </div>
          {listed.backups.length > 0 ? <p className="small">To put one in the shop’s place, stop the server, and on its machine run <code className="place">twinrest restore {listed.backups[0]!.name}</code> with the same data folder. The shop before is kept beside it; look at the devices afterwards.</p> : null}
        </>
      )}
      {done ? <StatusLine>{done}</StatusLine> : null}
      {trouble ? <StatusLine danger>{trouble}</StatusLine> : null}
      {waiting ? <OwnerSheet onClose={giveUp} onUnlocked={() => attempt(waiting)} /> : null}
    </section>
  )
}
