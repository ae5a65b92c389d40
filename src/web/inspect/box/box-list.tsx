import type { DraftRead } from '#engine/inspect/read-draft.ts'
import type { DraftRecord } from '#model/check-draft.ts'
import { listOf } from '#words/wording.ts'

type Props = { readonly draft: DraftRecord; readonly read: Pick<DraftRead, 'cells'>; readonly chosen: string; readonly onChoose: (bar: string) => void }

/** The bars so far, latest first; each opens again at a touch. */
export function BoxList({ draft: { form, looks }, read, chosen, onChoose }: Props) {
  return (
    <>
      <h2>{form.bars.length === 1 ? '1 bar' : `${form.bars.length} bars`}</h2>
      <ul className="box-list">
        {form.bars.toReversed().map(({ bar, name }) => {
          const cells = read.cells.filter(({ cell }) => cell.bar === bar), seen = looks[bar]?.seen ?? []
          const open = cells.filter(({ heightMm }) => heightMm === null).length, asks = cells.some((one) => one.asks !== null)
          return (
            <li key={bar}>
              <button type="button" className="box-row" aria-current={bar === chosen ? 'true' : undefined} onClick={() => onChoose(bar)}>
                <strong className="name-text">{name || '?'}</strong>
                <span>
                  <span className="name-text">{cells.map(({ text }) => text || '–').join(' · ')}</span>
                  <span className="small">{[...(seen.length > 0 ? [listOf(seen)] : []), ...(asks ? ['! asked about'] : open === 3 ? ['not measured yet'] : open > 0 ? [`${open} to read`] : [])].join('; ')}</span>
                </span>
              </button>
            </li>
          )
        })}
      </ul>
    </>
  )
}
