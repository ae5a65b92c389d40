import { useWindowVirtualizer } from '@tanstack/react-virtual'
import { type KeyboardEvent, useDeferredValue, useId, useLayoutEffect, useMemo, useRef, useState } from 'react'
import { wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { Link } from '#web/parts/link.tsx'
import { groupFinder } from '#web/rack/find-bars.ts'
import { pathOfLabel } from '#web/rack/path-of-label.ts'
import { type RackBar, type RackGroup, worstTrust } from '#web/rack/rack-bars.ts'
import { RackShelf } from '#web/rack/rack-shelf.tsx'
import { trustWords } from '#web/rack/say-bar.ts'
import { go } from '#web/router.ts'
import { useUnits } from '#web/units.ts'

type Props = { readonly groups: readonly RackGroup[]; readonly shop: ShopSnapshot; readonly chosen: string | null }

/** Search, the shelf, and a row for each pair, set or odd bar; retired ones only when they are asked for. Enter opens what a label says, or the one that is left. */
export function RackList({ groups, shop, chosen }: Props) {
  const units = useUnits(), id = useId()
  const [typed, setTyped] = useState(''), [retired, setRetired] = useState(false)
  const query = useDeferredValue(typed)
  const here = useMemo(() => groups.filter((group) => worstTrust(group) !== 'gone'), [groups]), gone = groups.length - here.length
  const listed = retired ? groups : here, find = useGroupFinder(listed, units), found = useMemo(() => find(query), [find, query])
  const openFirst = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' || event.nativeEvent.isComposing) return
    const path = pathOfLabel(typed, shop) ?? onlyOne(find(typed), typed)
    if (path === null) return
    setTyped('')
    go(path)
  }
  return (
    <>
      <div className="find">
        <div className="field">
          <input id={id} type="search" autoComplete="off" spellCheck={false} placeholder="35 · 30-32 t8 · B4 · name" value={typed} onChange={(event) => setTyped(event.target.value)} onKeyDown={openFirst} />
          <label htmlFor={id}>Find a bar, or type the code of a label</label>
        </div>
        <output className="small">{sayCount(found)}</output>
      </div>
      <RackShelf groups={found} />
      <Rows groups={found} units={units} chosen={chosen} />
      {found.length === 0 ? <p className="nothing">{typed.trim() === '' ? 'No bars here yet.' : `No bar fits “${typed}”. Search by height, slot, name or code.`}</p> : null}
      {gone > 0 ? <button type="button" className="press retired" aria-pressed={retired} onClick={() => setRetired(!retired)}>{retired ? 'Leave out the retired' : `Show the retired (${gone})`}</button> : null}
    </>
  )
}

const useGroupFinder = (groups: readonly RackGroup[], units: Units) => useMemo(() => groupFinder(groups, units), [groups, units])

/** Where one group is left: to the bar of that name, or else its first. */
function onlyOne(found: readonly RackGroup[], typed: string): string | null {
  if (found.length !== 1) return null
  const { bars } = found[0]!, named = bars.find(({ record }) => record.name.toLowerCase() === typed.trim().toLowerCase())
  return `/rack/${(named ?? bars[0]).record.id}`
}

/** As high as most rows are; each is measured once it is seen. */
const rowPx = 73

/** Only the rows in view are made, and some around them, so that ten thousand bars cost no more than a hundred. */
function Rows({ groups, units, chosen }: { readonly groups: readonly RackGroup[]; readonly units: Units; readonly chosen: string | null }) {
  const list = useRef<HTMLUListElement>(null), [top, setTop] = useState(0)
  useLayoutEffect(() => {
    const measure = () => setTop(Math.round((list.current?.getBoundingClientRect().top ?? 0) + scrollY))
    measure()
    const observer = new ResizeObserver(measure)
    observer.observe(document.body)
    return () => observer.disconnect()
  }, [])
  // No compiler is in use here; what the rows are is asked anew at each render.
  // oxlint-disable-next-line react/incompatible-library
  const rows = useWindowVirtualizer({ count: groups.length, estimateSize: () => rowPx, overscan: 8, scrollMargin: top, getItemKey: (at) => groups[at]!.key })
  return (
    <ul className="rack-rows" ref={list} style={{ height: rows.getTotalSize() }}>
      {rows.getVirtualItems().map(({ key, index, start }) => {
        const group = groups[index]!
        return <Row key={key} group={group} units={units} chosen={group.bars.some(({ record }) => record.id === chosen)} at={index} of={groups.length} topPx={start - top} measure={rows.measureElement} />
      })}
    </ul>
  )
}

type RowProps = { readonly group: RackGroup; readonly units: Units; readonly chosen: boolean; readonly at: number; readonly of: number; readonly topPx: number; readonly measure: (row: HTMLElement | null) => void }

function Row({ group: { bars, ...group }, units, chosen, at, of, topPx, measure }: RowProps) {
  const [first] = bars, { mark, word } = trustWords[worstTrust({ bars, ...group })]
  const names = [first.mates?.name, ...new Set(bars.map(({ record }) => record.name))].filter((name, at, all) => name && all.indexOf(name) === at)
  return (
    <li ref={measure} data-index={at} aria-posinset={at + 1} aria-setsize={of} style={{ transform: `translateY(${topPx}px)` }}>
      <Link to={`/rack/${first.record.id}`} className="rack-row" aria-current={chosen ? 'true' : undefined}>
        <span className="rack-height">
          <strong>{first.calledMm === null ? '?' : wordLength(first.calledMm, units)}</strong>
          <span className="small">{standings(bars)}</span>
        </span>
        <span className="rack-what">
          <span className="name-text">{names.length > 0 ? names.join(' · ') : bars.length > 1 ? 'mates' : 'odd bar'}{bars.length > 2 ? ` (${bars.length})` : ''}</span>
          <span className="small"><span aria-hidden="true" className="mark">{mark}</span> {word} · {wordLength(first.record.thicknessMm, units)} × {wordLength(first.record.lengthMm, units)}{elsewhere(bars)}</span>
        </span>
        <span className="rack-slot name-text">{[...new Set(bars.map(({ slot }) => slot?.name).filter(Boolean))].join(' ')}</span>
      </Link>
    </li>
  )
}

function standings(bars: RackGroup['bars']): string {
  const [first] = bars
  return bars.every(({ standing }) => standing === first.standing) ? first.standing : 'partly marked'
}

function elsewhere(bars: readonly RackBar[]): string {
  const places = new Set(bars.flatMap(({ elsewhere: place, overdue, record: { where } }) => (place === null ? [] : [`${where.at === 'vise' ? 'in' : where.at === 'out' && where.to === 'machine' ? 'at' : 'out with'} ${place}${overdue ? ', overdue' : ''}`])))
  return places.size === 0 ? '' : ` · ${[...places].join(', ')}`
}

function sayCount(groups: readonly RackGroup[]): string {
  const bars = groups.reduce((sum, group) => sum + group.bars.length, 0)
  return bars === 1 ? '1 bar' : `${bars} bars`
}
