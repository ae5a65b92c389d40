import type { ReactNode } from 'react'
import { capital } from '#words/wording.ts'
import { useDesk } from '#web/setup/desk.ts'
import { CutOptions } from '#web/setup/options/cut-options.tsx'
import { ViseOptions } from '#web/setup/options/vise-options.tsx'
import { WishOptions } from '#web/setup/options/wish-options.tsx'

/** What is chosen rather than typed about the thing that lies open: where from, through or blind, which tool, which vise. */
export function Options() {
  const { state: { drawer, form }, dispatch } = useDesk()
  switch (drawer?.of) {
    case 'cut': {
      const cut = form.cuts[drawer.index]
      return cut ? <Panel name={`${capital(cut.kind)} ${drawer.index + 1}`}><CutOptions cut={cut} index={drawer.index} /></Panel> : null
    }
    case 'hollow': return (
      <Panel name={`Hollow ${drawer.index + 1}: where the underside is away`}>
        <button type="button" className="action" onClick={() => dispatch({ do: 'remove hollow', index: drawer.index })}>Remove</button>
      </Panel>
    )
    case 'wishes': return <Panel name="At least"><WishOptions /></Panel>
    case 'vise': return <Panel name="Where it is held"><ViseOptions /></Panel>
    case undefined: return null
  }
}

function Panel({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  const { dispatch } = useDesk()
  return (
    <section className="setup-options" aria-label={name}>
      <header className="setup-options-head">
        <h2>{name}</h2>
        <button type="button" className="press" onClick={() => dispatch({ do: 'pull drawer', drawer: null })}>Done</button>
      </header>
      {children}
    </section>
  )
}
