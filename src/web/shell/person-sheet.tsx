import { useEffect, useState, type FormEvent } from 'react'
import { refreshStanding, useStanding } from '#web/access.ts'
import { setDevice, useDevice } from '#web/device.ts'
import { newId } from '#web/new-id.ts'
import { Sheet } from '#web/parts/sheet.tsx'
import { TextField } from '#web/parts/text-field.tsx'
import { OwnerSheet } from '#web/shop/access/owner-sheet.tsx'
import { useShop } from '#web/shop-store.ts'
import { writeDeed } from '#web/write.ts'

/** Who works here: tapped, or added once. Goes on without an answer, too. */
export function PersonSheet({ onClose }: { readonly onClose: () => void }) {
  const { shop } = useShop(), { person } = useDevice(), owner = useStanding()?.owner, [asking, setAsking] = useState(false)
  useEffect(() => { void refreshStanding() }, [])
  const [typed, setTyped] = useState(''), [error, setError] = useState<string | null>(null)
  const choose = (chosen: { id: string; initials: string } | null) => { setDevice({ person: chosen, asked: true }); onClose() }
  const add = (event: FormEvent) => {
    event.preventDefault()
    const initials = typed.trim()
    const known = shop?.people.find((one) => one.initials === initials)
    if (initials === '') return setError('Type your initials, or go on without.')
    if (known) return choose({ id: known.id, initials })
    const id = newId()
    writeDeed({ edits: [{ kind: 'person', record: id, fields: { initials, units: null } }] })
    choose({ id, initials })
  }
  return (
    <Sheet title="Who works here?" onClose={() => { setDevice({ asked: true }); onClose() }}>
      <p>Initials stand beside what you write down, so that others can ask you about it.</p>
      <div className="actions people">
        {shop?.people.map(({ id, initials }) => (
          <button key={id} type="button" className="action name-text" aria-pressed={id === person?.id} onClick={() => choose({ id, initials })}>{initials}</button>
        ))}
      </div>
      {owner?.set && !owner.unlocked ? (
        <button type="button" className="action" onClick={() => setAsking(true)}>New initials: for the owner to give</button>
      ) : (
        <form className="add-person" onSubmit={add}>
          <TextField label="initials" value={typed} onChange={setTyped} error={error} maxLength={8} />
          <button className="action main">That is me</button>
        </form>
      )}
      {asking ? <OwnerSheet onClose={() => setAsking(false)} onUnlocked={() => setAsking(false)} /> : null}
      <button type="button" className="press" onClick={() => choose(null)}>Go on without initials</button>
    </Sheet>
  )
}
