import { useState, type FormEvent } from 'react'
import { refreshStanding, useStanding } from '#web/access.ts'
import { ask } from '#web/api.ts'
import { SecretField } from '#web/parts/secret-field.tsx'
import { StatusLine } from '#web/parts/status-line.tsx'
import { useAsOwner } from '#web/shop/access/as-owner.ts'
import { OwnerSheet } from '#web/shop/access/owner-sheet.tsx'

const said = {
  set: 'New devices, new initials and whatever cannot be taken back need the owner’s passphrase.',
  open: 'No passphrase is set: whoever works on this machine may do everything. Opening the shop to its network needs one: a short sentence of 15 letters or more.',
  elsewhere: 'The owner’s passphrase is set on the machine the shop runs on.',
}

/** The owner's passphrase: set on the machine itself, given where it is asked for, changed, locked again. */
export function Owner() {
  const standing = useStanding(), [typed, setTyped] = useState(''), [again, setAgain] = useState(''), [changing, setChanging] = useState(false)
  const [error, setError] = useState<string | null>(null), [done, setDone] = useState<string | null>(null)
  const { attempt, waiting, giveUp, trouble } = useAsOwner()
  if (standing === null) return null
  const { here, owner } = standing
  const set = (event: FormEvent) => {
    event.preventDefault()
    setDone(null)
    if (typed !== again) return setError('The two are not alike.')
    setError(null)
    attempt(async () => {
      await ask('/api/owner/passphrase', { passphrase: typed })
      setTyped(''); setAgain(''); setChanging(false)
      setDone('The passphrase is set. Keep it where others do not find it; on the machine itself “twinrest owner passphrase” sets another.')
      await refreshStanding()
    })
  }
  const lock = () => attempt(async () => { await ask('/api/owner/lock', {}); await refreshStanding() })
  return (
    <section>
      <h2>Owner</h2>
      <p>{owner.set ? said.set : here ? said.open : said.elsewhere}</p>
      {(here && !owner.set) || changing ? (
        <form className="stack" onSubmit={set}>
          <SecretField label="new passphrase" value={typed} onChange={setTyped} fresh error={error} />
          <SecretField label="once more" value={again} onChange={setAgain} fresh />
          <div className="actions"><button className="action" disabled={typed === ''}>Set the passphrase</button></div>
        </form>
      ) : null}
      {owner.set && !changing ? (
        <div className="actions">
          <button type="button" className="action" onClick={() => { setDone(null); setChanging(true) }}>Change the passphrase</button>
          {owner.unlocked ? <button type="button" className="action" onClick={lock}>Lock again</button> : null}
        </div>
      ) : null}
      {done ? <StatusLine>{done}</StatusLine> : null}
      {trouble ? <StatusLine danger>{trouble}</StatusLine> : null}
      {waiting ? <OwnerSheet onClose={giveUp} onUnlocked={() => attempt(waiting)} /> : null}
    </section>
  )
}
