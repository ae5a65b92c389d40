import type { ReactNode } from 'react'
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
    case 'bars': return <Framed name="Which bars"><BarsPanel /></Framed>
    case 'method': return <Framed name="How it is done"><MethodPanel /></Framed>
    case 'instruments': return <Framed name="Read with"><InstrumentsPanel gauge={gauge} /></Framed>
    case 'stations': return <Framed name="Stations"><StationsPanel /></Framed>
    case 'zero': return <Framed name="Zero on"><ZeroPanel /></Framed>
  }
}

function Framed({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  const { open } = useCheckDesk()
  return (
    <form className="setup-options" aria-label={name} onSubmit={(event) => event.preventDefault()}>
      <header className="setup-options-head">
        <h2>{name}</h2>
        <button type="button" className="press" onClick={() => open(null)}>Done</button>
      </header>
      {children}
    </form>
  )
}
