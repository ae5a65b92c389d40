import { useState } from 'react'
import { setDevice, useDevice } from '#web/device.ts'
import { PersonSheet } from '#web/shell/person-sheet.tsx'

/** Asks once on each device who works here; a line on the page, so that nothing stands in the way of the work. */
export function AskPerson() {
  const { asked } = useDevice()
  const [open, setOpen] = useState(false)
  if (asked) return null
  return (
    <div className="strip no-print">
      <span>Who works here?</span>
      <button type="button" className="press" onClick={() => setOpen(true)}>Initials</button>
      <button type="button" className="press" onClick={() => setDevice({ asked: true })}>Not now</button>
      {open ? <PersonSheet onClose={() => setOpen(false)} /> : null}
    </div>
  )
}
