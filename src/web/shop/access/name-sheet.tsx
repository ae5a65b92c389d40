import { useState, type FormEvent } from 'react'
import type { EnrolledDevice } from '#model/access.ts'
import { Sheet } from '#web/parts/sheet.tsx'
import { TextField } from '#web/parts/text-field.tsx'

/** Another name for a device, as it stands in the list. */
export function NameSheet({ device, onName, onClose }: { readonly device: EnrolledDevice; readonly onName: (name: string) => void; readonly onClose: () => void }) {
  const [name, setName] = useState(device.name)
  const save = (event: FormEvent) => { event.preventDefault(); onName(name.trim()) }
  return (
    <Sheet title="Name of the device" onClose={onClose}>
      <form className="stack" onSubmit={save}>
        <TextField label="name" value={name} onChange={setName} maxLength={40} />
        <div className="actions"><button className="action main" disabled={name.trim() === '' || name.trim() === device.name}>Save the name</button></div>
      </form>
    </Sheet>
  )
}
