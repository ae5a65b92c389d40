import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { useDevice } from '#web/device.ts'
import { Choice } from '#web/parts/choice.tsx'
import { writeDeed } from '#web/write.ts'

/** What numbers are shown and read in when nothing else is typed: for the shop, and for the person at this device. */
export function UnitSettings({ shop }: { readonly shop: ShopSnapshot }) {
  const { person } = useDevice(), me = shop.people.find(({ id }) => id === person?.id)
  return (
    <section>
      <h2>Numbers and words</h2>
      <UnitChoices units={shop.shop.units} onChange={(units) => writeDeed({ edits: [{ kind: 'shop', record: 'shop', fields: { units } }] })} />
      {me ? (
        <>
          <Choice
            label={`For ${me.initials}`} value={me.units === null ? 'shop' : 'own'} options={[{ value: 'shop', label: 'as the shop' }, { value: 'own', label: 'my own' }]}
            onChange={(which) => writeDeed({ edits: [{ kind: 'person', record: me.id, fields: { units: which === 'shop' ? null : shop.shop.units } }] })}
          />
          {me.units === null ? null : <UnitChoices units={me.units} whose={me.initials} onChange={(units) => writeDeed({ edits: [{ kind: 'person', record: me.id, fields: { units } }] })} />}
        </>
      ) : <p className="small">Choose your initials, at the top right, to have units of your own.</p>}
    </section>
  )
}

function UnitChoices({ units, whose, onChange }: { readonly units: Units; readonly whose?: string; readonly onChange: (units: Units) => void }) {
  const of = whose === undefined ? '' : `, ${whose}`
  return (
    <div className="choices">
      <Choice label={`Lengths${of}`} value={units.length} onChange={(length) => onChange({ ...units, length })} options={[{ value: 'mm', label: 'mm' }, { value: 'in', label: 'inch' }]} />
      <Choice label={`Decimal mark${of}`} value={units.decimalMark} onChange={(decimalMark) => onChange({ ...units, decimalMark })} options={[{ value: '.', label: '0.00' }, { value: ',', label: '0,00' }]} />
      <Choice label={`Words${of}`} value={units.words} onChange={(words) => onChange({ ...units, words })} options={[{ value: 'US', label: 'vise, gage' }, { value: 'UK', label: 'vice, gauge' }]} />
    </div>
  )
}
