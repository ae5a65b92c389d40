import type { Scene } from '#drafting/scene.ts'
import { Drawing } from '#web/parts/drawing.tsx'
import { Paper } from '#web/parts/paper.tsx'

type Props = { readonly title: string; readonly back: string; readonly onBack: () => void; readonly size: 'A4' | 'Letter'; readonly pages: readonly Scene[] }

/** A sheet of a screen beside the setup, as it comes out of the printer; back to the screen as it was left. */
export function BesidePrint({ title, back, onBack, size, pages }: Props) {
  return (
    <div className="print-page">
      <div className="print-head no-print">
        <button type="button" className="press" onClick={onBack}>{back}</button>
        <h1>{title}</h1>
        <button type="button" className="action main" onClick={() => print()}>Print</button>
      </div>
      {pages.map((scene, at) => <Paper key={at} size={size}><Drawing scene={scene} medium="print" /></Paper>)}
    </div>
  )
}
