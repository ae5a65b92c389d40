import { type ReactNode, useEffect, useRef } from 'react'
import { type Panel, useCheckDesk } from '#web/inspect/check/desk.ts'
import { BarsPanel } from '#web/inspect/check/panels/bars-panel.tsx'
import { InstrumentsPanel } from '#web/inspect/check/panels/instruments-panel.tsx'
import { MethodPanel } from '#web/inspect/check/panels/method-panel.tsx'
import { StationsPanel } from '#web/inspect/check/panels/stations-panel.tsx'
import { ZeroPanel } from '#web/inspect/check/panels/zero-panel.tsx'
import type { Gauge } from '#web/inspect/serial/use-gauge.ts'

/** What is chosen rather than typed about the check. */
export function Panels({ panel, gauge }: { readonly panel: Panel; readonly gauge: Gauge }) {
  switch (panel) {
    case 'bars': return <Framed name="Which bars" key={panel}><BarsPanel /></Framed>
    case 'method': return <Framed name="How it is done" key={panel}><MethodPanel /></Framed>
    case 'instruments': return <Framed name="Read with" key={panel}><InstrumentsPanel gauge={gauge} /></Framed>
    case 'stations': return <Framed name="Stations" key={panel}><StationsPanel /></Framed>
    case 'zero': return <Framed name="Zero on" key={panel}><ZeroPanel /></Framed>
  }
}

function Framed({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  const { open, panel, current } = useCheckDesk(), form = useRef<HTMLFormElement>(null)
  // The keyboard goes with it; a scanner finds the field it types into, and no tablet’s keyboard rises by itself.
  useEffect(() => {
    const field = matchMedia('(pointer: fine)').matches ? form.current?.querySelector<HTMLElement>('input[type="search"]') : null
    ;(field ?? form.current)?.focus({ preventScroll: true })
  }, [])
  const done = () => {
    // With the bars chosen the hand goes on to the zero, or to the next reading; a gauge that types like a keyboard finds its field.
    const next = panel !== 'bars' ? null
      : document.querySelector<HTMLElement>('.insp-head-field[data-needed] input') ?? (current === null ? null : document.querySelector<HTMLElement>(`[data-cell="${CSS.escape(current)}"] input`))
    ;(next ?? document.querySelector<HTMLElement>('.insp-head [aria-expanded="true"]'))?.focus()
    open(null)
  }
  return (
    <form className="setup-options" ref={form} tabIndex={-1} aria-label={name} onSubmit={(event) => event.preventDefault()}>
      <header className="setup-options-head">
        <h2>{name}</h2>
        <button type="button" className="press" onClick={done}>Done</button>
      </header>
      {children}
    </form>
  )
}
