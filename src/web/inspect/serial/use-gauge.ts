import { useEffect, useRef, useState } from 'react'
import { typeReading } from '#web/inspect/draft/draft-edits.ts'
import { type GaugeLine, readingIn, usualLine } from '#web/inspect/serial/gauge-line.ts'
import { type GaugePort, openGauge, serialHere } from '#web/inspect/serial/gauge-port.ts'
import { toNextField } from '#web/parts/next-field.ts'

export type Gauge = {
  readonly state: 'not here' | 'off' | 'asking' | 'on' | 'broken'
  readonly how: GaugeLine
  readonly put: (part: Partial<GaugeLine>) => void
  readonly connect: () => void
  readonly disconnect: () => void
  /** The last line that came, and whether a reading was in it. */
  readonly heard: { readonly line: string; readonly reading: string | null } | null
}

const key = 'twinrest-gauge-line'

/** A gauge on a serial line of this device: each reading goes into the field in hand, or the next empty one, and moves on. */
export function useGauge(draftId: string): Gauge {
  const [how, setHow] = useState<GaugeLine>(kept), [state, setState] = useState<Gauge['state']>(serialHere() ? 'off' : 'not here')
  const [heard, setHeard] = useState<Gauge['heard']>(null)
  const port = useRef<GaugePort | null>(null)
  useEffect(() => () => { void port.current?.close(); port.current = null }, [draftId])
  const put = (part: Partial<GaugeLine>) => {
    const next = { ...how, ...part }
    setHow(next)
    try { localStorage.setItem(key, JSON.stringify(next)) } catch { /* A browser that keeps nothing asks again next time. */ }
  }
  const connect = async () => {
    const serial = serialHere()
    if (serial === null) return
    setState('asking')
    try {
      const opened = await openGauge(serial, how, (line) => {
        const reading = readingIn(line, how)
        setHeard({ line, reading })
        if (reading !== null) take(draftId, reading)
      })
      port.current = opened
      setState('on')
      await opened.ended
      if (port.current === opened) { port.current = null; setState('broken') }
    } catch (error) {
      port.current = null
      // No line was chosen: nothing is wrong.
      setState(error instanceof DOMException && error.name === 'NotFoundError' ? 'off' : 'broken')
    }
  }
  const disconnect = () => {
    const open = port.current
    port.current = null
    setState('off')
    void open?.close()
  }
  return { state, how, put, connect: () => void connect(), disconnect, heard }
}

/** Into the cell that is being typed; where none is, into the first empty one. */
function take(draftId: string, reading: string): void {
  const active = document.activeElement?.closest<HTMLElement>('[data-cell]')
  const cell = active ?? [...document.querySelectorAll<HTMLElement>('[data-cell]')].find((one) => one.querySelector('input')?.value === '')
  const field = cell?.querySelector('input')
  if (!cell || !field) return
  field.focus()
  typeReading(draftId, cell.dataset['cell']!, reading)
  toNextField(field)
}

function kept(): GaugeLine {
  try { return { ...usualLine, ...JSON.parse(localStorage.getItem(key) ?? '{}') as Partial<GaugeLine> } } catch { return usualLine }
}
