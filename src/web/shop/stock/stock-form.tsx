import { useState, type FormEvent } from 'react'
import { conditions } from '#model/stock-length.ts'
import type { StockRecord } from '#model/stock-record.ts'
import { makingBooks } from '#reference/making-books.ts'
import { conditionWords } from '#words/say-make.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { Choice } from '#web/parts/choice.tsx'
import { toFirstWrong } from '#web/parts/first-wrong.ts'
import { LengthField } from '#web/parts/length-field.tsx'
import { Link } from '#web/parts/link.tsx'
import { NumberField } from '#web/parts/number-field.tsx'
import { SelectField } from '#web/parts/select-field.tsx'
import { TextField } from '#web/parts/text-field.tsx'
import { useRefused } from '#web/parts/use-refused.ts'
import { go } from '#web/router.ts'
import { RecordActions } from '#web/shop/record-actions.tsx'
import { keepRecord } from '#web/shop/record-edit.ts'
import { newStockTexts, readStock, stockTexts, type StockTexts, type StockWrong } from '#web/shop/stock/stock-texts.ts'
import { useUnits } from '#web/units.ts'

/** Raw material, new or to be changed: a stock length or a stock plate. */
export function StockForm({ stock }: { readonly stock: StockRecord | null }) {
  const units = useUnits(), [texts, setTexts] = useState<StockTexts>(() => (stock ? stockTexts(stock, units) : newStockTexts('plate')))
  const read = readStock(texts, units), [wrong, setTried] = useRefused(read)
  const put = (part: Partial<StockTexts>) => setTexts({ ...texts, ...part }), say = (field: keyof StockWrong) => { const refusal = wrong[field]; return refusal ? sayRefusal(refusal, units) : null }
  const save = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault()
    if ('refused' in read) { setTried(true); return toFirstWrong(event.currentTarget) }
    keepRecord('stock', stock, stock ? read.values : { ...read.values, retired: false })
    go('/shop')
  }
  const isPlate = texts.form === 'plate'
  return (
    <form className="page" onSubmit={save} noValidate>
      <Link to="/shop" className="back">Shop</Link>
      <h1 className="name-text">{stock ? `Change ${stock.name}` : 'Add stock'}</h1>
      <div className="choices">
        <Choice label="Form" value={texts.form} onChange={(form) => put({ form })} options={[{ value: 'plate', label: 'plate' }, { value: 'length', label: 'length' }]} />
        <Choice label="Whole or offcut" value={texts.offcut ? 'offcut' : 'whole'} onChange={(kind) => put({ offcut: kind === 'offcut' })} options={[{ value: 'whole', label: 'whole' }, { value: 'offcut', label: 'offcut' }]} />
      </div>
      <div className="field-list book">
        <SelectField label="how it comes" value={texts.condition} onChange={(text) => put({ condition: conditions.find((one) => one === text)! })} options={conditions.map((value) => ({ value, label: conditionWords[value] }))} />
        <TextField label="steel" value={texts.steel} maxLength={40} known={makingBooks.steels.map(({ name }) => name)} onChange={(steel) => put({ steel })} error={say('steel')} note="of the list, so that routes know it" />
        <TextField label="name" value={texts.name} maxLength={60} onChange={(name) => put({ name })} note={texts.name === '' ? 'left empty: steel and section' : null} />
      </div>
      <div className="field-list">
        <LengthField label={isPlate ? 'length, along it' : 'length'} value={texts.length} onChange={(length) => put({ length })} refused={wrong.lengthMm} />
        <LengthField label={isPlate ? 'width, strips across it' : 'width, becomes the height'} value={texts.width} onChange={(width) => put({ width })} refused={wrong.widthMm} />
        <LengthField label="thickness" value={texts.thickness} onChange={(thickness) => put({ thickness })} refused={wrong.thicknessMm} />
        <NumberField label="how many" value={texts.count} ifEmpty="bought as needed" onChange={(count) => put({ count })} error={say('count')} />
        <NumberField label="price of one" value={texts.price} ifEmpty="not priced" onChange={(price) => put({ price })} error={say('price')} />
      </div>
      <TextField label="note" value={texts.note} onChange={(note) => put({ note })} maxLength={2000} />
      <RecordActions kind="stock" record={stock} save="Save the stock" someWrong={Object.keys(wrong).length > 0} />
    </form>
  )
}
