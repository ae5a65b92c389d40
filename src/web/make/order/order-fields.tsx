import { fittedJaws, lowerJawMm } from '#engine/rack/vise-from.ts'
import type { OrderForm } from '#model/job-record.ts'
import { wordLength } from '#model/length.ts'
import type { Refusal } from '#model/refusal.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { type Use, uses } from '#model/wishes.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { changeOrder } from '#web/make/job-edits.ts'
import { Choice } from '#web/parts/choice.tsx'
import { DateField } from '#web/parts/date-field.tsx'
import { LengthField } from '#web/parts/length-field.tsx'
import { NumberField } from '#web/parts/number-field.tsx'
import { SelectField } from '#web/parts/select-field.tsx'
import { useTerms, useUnits } from '#web/units.ts'

/** `refused`: what cannot be read or cannot be, at `field`. */
type Props = { readonly id: string; readonly form: OrderForm; readonly shop: ShopSnapshot; readonly refused: Refusal | null; readonly field: string | null }

/** The order as a form; every key is kept. */
export function OrderFields({ id, form, shop, refused, field }: Props) {
  const units = useUnits(), { vise: viseWord } = useTerms(), put = (part: Partial<OrderForm>) => changeOrder(id, part)
  const at = (name: string) => (field === name && refused !== null ? refused : undefined), said = (name: string) => { const one = at(name); return one ? sayRefusal(one, units) : null }
  const vises = shop.vises.filter(({ retired }) => !retired)
  const fromVise = (viseId: string) => {
    const vise = vises.find((one) => one.id === viseId)
    if (vise) put({ lengthBy: 'jaw', jawWidth: wordLength(vise.jawWidthMm, units), jawHeight: wordLength(lowerJawMm(fittedJaws(vise)), units) })
  }
  const offer = (part: Partial<OrderForm['offer']>) => put({ offer: { ...form.offer, ...part } })
  return (
    <div className="mk-fields">
      <section aria-label="Heights">
        <Choice
          label="Heights" value={form.heightsBy} onChange={(heightsBy) => put({ heightsBy })}
          options={[{ value: 'list', label: 'one or a list' }, { value: 'ladder', label: 'in steps' }, { value: 'jaw', label: 'in steps down from the jaw' }]}
        />
        <div className="field-list">
          {form.heightsBy === 'list' ? <div className="wide"><NumberField label="heights, a space between" value={form.heights} maxLength={2000} onChange={(heights) => put({ heights })} error={said('heights')} /></div> : null}
          {form.heightsBy === 'ladder' ? (
            <>
              <LengthField label="from" value={form.from} onChange={(from) => put({ from })} refused={at('from')} />
              <LengthField label="to" value={form.to} onChange={(to) => put({ to })} refused={at('to')} />
            </>
          ) : null}
          {form.heightsBy === 'jaw' ? (
            <>
              <LengthField label="height of the jaw" value={form.jawHeight} onChange={(jawHeight) => put({ jawHeight })} refused={at('jawHeight')} />
              <LengthField label="highest so much below" value={form.below} onChange={(below) => put({ below })} refused={at('below')} />
              <LengthField label="lowest" value={form.lowest} onChange={(lowest) => put({ lowest })} refused={at('lowest')} />
            </>
          ) : null}
          {form.heightsBy === 'list' ? null : <LengthField label="step" value={form.step} onChange={(step) => put({ step })} refused={at('step')} />}
          <NumberField label="pairs of each" value={form.pairs} onChange={(pairs) => put({ pairs })} error={said('pairs')} />
          <NumberField label={`for so many ${viseWord}s`} value={form.vises} onChange={(count) => put({ vises: count })} error={said('vises')} />
        </div>
      </section>
      <section aria-label="Sizes">
        <Choice label="Length" value={form.lengthBy} onChange={(lengthBy) => put({ lengthBy })} options={[{ value: 'jaw', label: 'a little under the jaws' }, { value: 'length', label: 'as said' }]} />
        <div className="field-list">
          <LengthField label="thickness" value={form.thickness} onChange={(thickness) => put({ thickness })} refused={at('thickness')} />
          {form.lengthBy === 'length' ? <LengthField label="length" value={form.length} onChange={(length) => put({ length })} refused={at('length')} /> : (
            <>
              <LengthField label="width of the jaws" value={form.jawWidth} onChange={(jawWidth) => put({ jawWidth })} refused={at('jawWidth')} />
              <LengthField label="shorter by" value={form.under} onChange={(under) => put({ under })} refused={at('under')} />
            </>
          )}
          {vises.length > 0 ? <SelectField label={`jaws as of a ${viseWord}`} value="" onChange={fromVise} options={[{ value: '', label: 'take over …' }, ...vises.map(({ id: value, name }) => ({ value, label: name }))]} /> : null}
        </div>
      </section>
      <section aria-label="What for">
        <Choice<Use> label="Good for" value={form.use} onChange={(use) => put({ use })} options={uses.map((use) => ({ value: use, label: use }))} />
        <div className="field-list">
          <NumberField label="hardness, HRC" value={form.hrc} ifEmpty="soft will do" onChange={(hrc) => put({ hrc })} error={said('hrc')} />
          <DateField label="wanted by" value={form.due ?? ''} onChange={(due) => put({ due: due === '' ? null : due })} />
          <SelectField label="worked on" value={form.faces ? 'faces' : 'edges'} onChange={(sides) => put({ faces: sides === 'faces' })} options={[{ value: 'edges', label: 'edges only' }, { value: 'faces', label: 'edges and faces' }]} />
        </div>
      </section>
      <details className="mk-offer">
        <summary>An offer for bought ones</summary>
        <div className="field-list">
          <NumberField label="price of all" value={form.offer.cost} ifEmpty="nobody asked" onChange={(cost) => offer({ cost })} error={said('offer.cost')} />
          <NumberField label="days" more="until they come" value={form.offer.days} onChange={(days) => offer({ days })} error={said('offer.days')} />
          <NumberField label="mates within, µm" value={form.offer.match} ifEmpty="not said" onChange={(match) => offer({ match })} error={said('offer.match')} />
          <NumberField label="parallel within, µm" value={form.offer.parallel} ifEmpty="not said" onChange={(parallel) => offer({ parallel })} error={said('offer.parallel')} />
        </div>
      </details>
    </div>
  )
}
