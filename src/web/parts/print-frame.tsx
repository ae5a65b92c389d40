import type { Scene } from '#drafting/scene.ts'
import { Drawing } from '#web/parts/drawing.tsx'
import { Link } from '#web/parts/link.tsx'
import { Paper } from '#web/parts/paper.tsx'

type Props = { readonly title: string; readonly back: { readonly to: string; readonly name: string }; readonly size: 'A4' | 'Letter'; readonly pages: readonly Scene[] }

/** Pages as they come out of the printer, with what prints them above. */
export function PrintFrame({ title, back, size, pages }: Props) {
  return (
    <div className="print-page">
      <div className="print-head no-print">
        <Link to={back.to} className="back">{back.name}</Link>
        <h1>{title}</h1>
        <button type="button" className="action main" onClick={() => print()}>Print</button>
      </div>
      {pages.map((scene, at) => <Paper key={at} size={size}><Drawing scene={scene} medium="print" /></Paper>)}
    </div>
  )
}

export function NothingToPrint({ why, back }: { readonly why: string; readonly back: Props['back'] }) {
  return <div className="page"><h1>{why}</h1><p><Link to={back.to}>{`Go to ${back.name}`}</Link></p></div>
}
