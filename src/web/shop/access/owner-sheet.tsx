import { useState, type FormEvent } from 'react'
import { refreshStanding } from '#web/access.ts'
import { ask } from '#web/api.ts'
import { SecretField } from '#web/parts/secret-field.tsx'
import { Sheet } from '#web/parts/sheet.tsx'
import { sayTrouble } from '#web/shop/access/say-trouble.ts'
import { useUnits } from '#web/units.ts'

/** Asks for the owner's passphrase; given, it holds on this device for ten minutes. */
export function OwnerSheet({ onClose, onUnlocked }: { readonly onClose: () => void; readonly onUnlocked: () => void }) {
  const units = useUnits(), [typed, setTyped] = useState(''), [error, setError] = useState<string | null>(null), [asking, setAsking] = useState(false)
  const give = async (event: FormEvent) => {
    event.preventDefault()
    if (typed.trim() === '') return setError('Type the passphrase.')
    setAsking(true)
    try {
      await ask('/api/owner/unlock', { passphrase: typed })
      await refreshStanding()
      onUnlocked()
    } catch (trouble) {
      setError(sayTrouble(trouble, units))
    } finally { setAsking(false) }
  }
  return (
    <Sheet title="For the owner" onClose={onClose}>
      <p>Devices, initials and whatever cannot be taken back are the owner’s. The passphrase holds on this device for ten minutes.</p>
      <form className="stack" onSubmit={(event) => void give(event)}>
        <SecretField label="owner’s passphrase" value={typed} onChange={setTyped} error={error} />
        <div className="actions"><button className="action main" disabled={asking}>{asking ? 'Being looked at' : 'Go on'}</button></div>
      </form>
    </Sheet>
  )
}
