import { type Use, uses } from '#model/wishes.ts'
import { PickBars } from '#web/inspect/pick/pick-bars.tsx'
import { Choice } from '#web/parts/choice.tsx'
import { LengthField } from '#web/parts/length-field.tsx'
import type { Refused } from '#web/parts/read-fields.ts'
import type { RackGroup } from '#web/rack/rack-bars.ts'
import { useTerms } from '#web/units.ts'

/** What is asked of the mates. `vises` 0: pairs; `picked` null: every measured bar. */
export type MatesTexts = { readonly vises: number; readonly use: Use; readonly from: string; readonly to: string; readonly picked: readonly string[] | null }
export const noMatesTexts: MatesTexts = { vises: 0, use: 'milling', from: '', to: '', picked: null }

type Props = {
  readonly texts: MatesTexts
  readonly onChange: (texts: MatesTexts) => void
  readonly refused: Refused<{ fromMm: number; toMm: number }>
  readonly groups: readonly RackGroup[]
  readonly measured: readonly string[]
}

/** Pairs or bars for a row of vises, for which use, out of which bars. */
export function MatesWishFields({ texts, onChange, refused, groups, measured }: Props) {
  const { vise } = useTerms(), put = (part: Partial<MatesTexts>) => onChange({ ...texts, ...part })
  const choosable = groups.flatMap(({ key, bars }): RackGroup[] => { const [first, ...rest] = bars.filter(({ record }) => measured.includes(record.id)); return first ? [{ key, bars: [first, ...rest] }] : [] })
  return (
    <section className="mates-wish" aria-label="What is asked">
      <div className="choices">
        <Choice label="For" value={String(texts.vises)} onChange={(vises) => put({ vises: Number(vises) })} options={[{ value: '0', label: 'pairs' }, ...[2, 3, 4].map((many) => ({ value: String(many), label: `${many} ${vise}s` }))]} />
        {texts.vises === 0 ? <Choice label="Near enough for" value={texts.use} onChange={(use) => put({ use })} options={uses.map((use) => ({ value: use, label: use }))} /> : null}
      </div>
      <div className="field-list">
        <LengthField label="heights from" value={texts.from} ifEmpty="any" onChange={(from) => put({ from })} refused={refused.fromMm} />
        <LengthField label="heights to" value={texts.to} ifEmpty="any" onChange={(to) => put({ to })} refused={refused.toMm} />
      </div>
      <Choice label="Out of" value={texts.picked === null ? 'all' : 'some'} onChange={(which) => put({ picked: which === 'all' ? null : [] })} options={[{ value: 'all', label: `all measured bars (${measured.length})` }, { value: 'some', label: 'those I pick' }]} />
      {texts.picked === null ? null : (
        <details className="sum" open>
          <summary>{texts.picked.length === 1 ? '1 bar picked' : `${texts.picked.length} bars picked`}</summary>
          <PickBars groups={choosable} chosen={texts.picked} onChange={(picked) => put({ picked })} />
        </details>
      )}
    </section>
  )
}
