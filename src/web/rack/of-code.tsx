import { useEffect } from 'react'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { Link } from '#web/parts/link.tsx'
import { pathOfLabel } from '#web/rack/path-of-label.ts'
import { go } from '#web/router.ts'

/** The address a label may carry: goes on to the bar or slot. */
export function OfCode({ typed, shop }: { readonly typed: string; readonly shop: ShopSnapshot }) {
  const path = pathOfLabel(typed, shop)
  useEffect(() => { if (path !== null) go(path, { replace: true }) }, [path])
  return (
    <div className="side-page">
      <h1>{path === null ? 'No label of this shop' : 'Opening'}</h1>
      {path === null ? <p className="name-text">No bar and no slot has the code “{typed}”. A code is eight letters and digits, without 0, 1, I and O. <Link to="/rack">See all bars</Link></p> : null}
    </div>
  )
}
