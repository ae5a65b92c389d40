import { useState, type FormEvent } from 'react'
import type { ViseRecord } from '#model/vise-record.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { newId } from '#web/new-id.ts'
import { toFirstWrong } from '#web/parts/first-wrong.ts'
import { LengthField } from '#web/parts/length-field.tsx'
import { Link } from '#web/parts/link.tsx'
import { TextField } from '#web/parts/text-field.tsx'
import { useRefused } from '#web/parts/use-refused.ts'
import { go } from '#web/router.ts'
import { JawSetFields } from '#web/shop/jaw-set-fields.tsx'
import { RecordActions } from '#web/shop/record-actions.tsx'
import { keepRecord } from '#web/shop/record-edit.ts'
import { type JawTexts, newJawTexts, readVise, viseTexts, type ViseTexts, type ViseWrong } from '#web/shop/vise-texts.ts'
import { useTerms, useUnits } from '#web/units.ts'

/** A vise, new or to be changed: how far it opens, and its jaws with the heights that everything is reckoned from. */
export function ViseForm({ vise }: { readonly vise: ViseRecord | null }) {
  const units = useUnits(), { vise: word } = useTerms()
  const [texts, setTexts] = useState<ViseTexts>(() => (vise ? viseTexts(vise, units) : emptyVise()))
  const read = readVise(texts, vise, units), [wrong, setTried] = useRefused<ViseWrong>(read)
  const put = (part: Partial<ViseTexts>) => setTexts({ ...texts, ...part })
  const putJaw = (id: string, part: Partial<JawTexts>) => put({ jawSets: texts.jawSets.map((jaw) => (jaw.id === id ? { ...jaw, ...part } : jaw)) })
  const save = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault()
    if ('refused' in read) { setTried(true); return toFirstWrong(event.currentTarget) }
    keepRecord('vise', vise, vise ? read.values : { ...read.values, retired: false, measured: null })
    go('/shop')
  }
  const addJaws = () => put({ jawSets: [...texts.jawSets, newJawTexts(newId(), `jaws ${texts.jawSets.length + 1}`)] })
  const drop = (id: string) => {
    const left = texts.jawSets.filter((jaw) => jaw.id !== id)
    put({ jawSets: left, fitted: texts.fitted === id ? left[0]!.id : texts.fitted })
  }
  return (
    <form className="page" onSubmit={save} noValidate>
      <Link to="/shop" className="back">Shop</Link>
      <h1 className="name-text">{vise ? `Change ${vise.name}` : `Add a ${word}`}</h1>
      <div className="field-list">
        <TextField label="name" value={texts.name} onChange={(name) => put({ name })} maxLength={40} error={wrong['name'] ? sayRefusal(wrong['name'], units) : null} />
        <LengthField label="opens" value={texts.opening} onChange={(opening) => put({ opening })} refused={wrong['openingMm']} />
        <LengthField label="jaw width" value={texts.jawWidth} onChange={(jawWidth) => put({ jawWidth })} refused={wrong['jawWidthMm']} />
      </div>
      {texts.jawSets.map((jaw, at) => (
        <JawSetFields
          key={jaw.id} jaw={jaw} at={at} wrong={wrong} fitted={texts.fitted === jaw.id} onChange={(part) => putJaw(jaw.id, part)}
          onFit={() => put({ fitted: jaw.id })} onDrop={texts.jawSets.length > 1 ? () => drop(jaw.id) : null}
        />
      ))}
      <div><button type="button" className="action" onClick={addJaws} disabled={texts.jawSets.length >= 20}>Add other jaws</button></div>
      <TextField label="note" value={texts.note} onChange={(note) => put({ note })} maxLength={2000} />
      <RecordActions kind="vise" record={vise} save={`Save the ${word}`} someWrong={Object.keys(wrong).length > 0}>
        {vise ? <Link to={`/shop/vise/${vise.id}/card`} className="action">Its card</Link> : null}
        {vise ? <Link to={`/shop/vise/${vise.id}/measure`} className="action">Measure it</Link> : null}
      </RecordActions>
    </form>
  )
}

function emptyVise(): ViseTexts {
  const jaws = newJawTexts(newId(), 'jaws 1')
  return { name: '', jawWidth: '', opening: '', note: '', jawSets: [jaws], fitted: jaws.id }
}
