import { useCheckDesk } from '#web/inspect/check/desk.ts'
import { changeForm } from '#web/inspect/draft/draft-edits.ts'
import { wordHeight } from '#web/inspect/say-check.ts'
import { Choice } from '#web/parts/choice.tsx'

/** The indicator is set to zero on a gauge block, or on the middle of one of the bars. */
export function ZeroPanel() {
  const { draft: { id, form }, nameOf, terms, units, facts } = useCheckDesk()
  const options = [{ value: 'block', label: `a ${terms.gauge} block` }, ...form.bars.map(({ bar }) => ({ value: bar, label: `middle of ${nameOf(bar)}` }))]
  const value = form.zeroOn === 'block' ? 'block' : form.zeroBar ?? ''
  const take = (on: string) => changeForm(id, on === 'block' ? { zeroOn: 'block', zeroBar: null } : { zeroOn: 'bar', zeroBar: on, zero: '' })
  const height = form.zeroBar === null ? null : facts.heights(form.zeroBar)
  return (
    <>
      <Choice label="Zero on" quiet value={value} options={options} onChange={take} />
      <p className="setup-lines">{form.zeroOn === 'block'
        ? `Heights count from the block: type its height where it says “zero”. What the blocks are off by goes into the height of each bar, not into the difference of mates.`
        : height ? `Heights count from this bar, taken to be as ${height.standing} (${wordHeight(height.heightMm, form.unit, units)} ${form.unit}). Differences are proved, heights only as well as that one is.`
          : 'Heights count from this bar: type its height where it says “zero”.'}</p>
    </>
  )
}
