import { useState, type FormEvent } from 'react'
import { machineKinds } from '#model/machine.ts'
import type { MachineRecord } from '#model/machine-record.ts'
import { machineWords } from '#words/say-make.ts'
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
import { machineTexts, type MachineTexts, type MachineWrong, newMachineTexts, readMachine } from '#web/shop/machines/machine-texts.ts'
import { RecordActions } from '#web/shop/record-actions.tsx'
import { keepRecord } from '#web/shop/record-edit.ts'
import { useUnits } from '#web/units.ts'

/** A machine bars are made with, new or to be changed. A job keeps the machines as they were when its way was chosen. */
export function MachineForm({ machine }: { readonly machine: MachineRecord | null }) {
  const units = useUnits(), [texts, setTexts] = useState<MachineTexts>(() => (machine ? machineTexts(machine, units) : newMachineTexts))
  const read = readMachine(texts, machine, units), [wrong, setTried] = useRefused(read)
  const put = (part: Partial<MachineTexts>) => setTexts({ ...texts, ...part }), say = (field: keyof MachineWrong) => { const refusal = wrong[field]; return refusal ? sayRefusal(refusal, units) : null }
  const save = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault()
    if ('refused' in read) { setTried(true); return toFirstWrong(event.currentTarget) }
    keepRecord('machine', machine, machine ? read.values : { ...read.values, retired: false })
    go('/shop')
  }
  return (
    <form className="page" onSubmit={save} noValidate>
      <Link to="/shop" className="back">Shop</Link>
      <h1 className="name-text">{machine ? `Change ${machine.name}` : 'Add a machine'}</h1>
      {machine ? null : <Choice label="What it is" value={texts.kind} onChange={(kind) => { put({ kind }); setTried(false) }} options={machineKinds.map((kind) => ({ value: kind, label: machineWords[kind] }))} />}
      <div className="field-list book">
        <TextField label="name" value={texts.name} maxLength={40} onChange={(name) => put({ name })} error={say('name')} />
      </div>
      <div className="field-list">
        <NumberField label="an hour costs" value={texts.perHour} ifEmpty="not priced" onChange={(perHour) => put({ perHour })} error={say('perHour')} />
        <LengthField label="longest bar" value={texts.longest} ifEmpty="any" onChange={(longest) => put({ longest })} refused={wrong.longestMm} />
        {texts.kind === 'saw' ? (
          <>
            <LengthField label="a cut takes" value={texts.kerf} ifEmpty="as usual" onChange={(kerf) => put({ kerf })} refused={wrong.kerfMm} />
            <LengthField label="off a sawn face" value={texts.sawnFace} ifEmpty="as usual" onChange={(sawnFace) => put({ sawnFace })} refused={wrong.sawnFaceMm} />
          </>
        ) : null}
        {texts.kind === 'mill' ? (
          <>
            <SelectField label="hardened steel" value={texts.hardMilling ? 'yes' : 'no'} onChange={(text) => put({ hardMilling: text === 'yes' })} options={[{ value: 'no', label: 'not for it' }, { value: 'yes', label: 'stiff and enclosed' }]} />
            <NumberField label="slowest, 1/min" value={texts.leastRpm} ifEmpty="not known" onChange={(leastRpm) => put({ leastRpm })} error={say('leastRpm')} />
            <NumberField label="fastest, 1/min" value={texts.mostRpm} ifEmpty="not known" onChange={(mostRpm) => put({ mostRpm })} error={say('mostRpm')} />
            <div className="wide"><NumberField label="speeds of the gearbox, a space between" value={texts.speeds} maxLength={400} onChange={(speeds) => put({ speeds })} error={say('speedsRpm')} /></div>
            <NumberField label="power of the motor, kW" value={texts.power} ifEmpty="not known" onChange={(power) => put({ power })} error={say('powerKw')} />
            <LengthField label="fastest feed a minute" value={texts.mostFeed} ifEmpty="not known" onChange={(mostFeed) => put({ mostFeed })} refused={wrong.mostFeedMmPerMin} />
          </>
        ) : null}
      </div>
      <TextField label="note" value={texts.note} onChange={(note) => put({ note })} maxLength={2000} />
      <RecordActions kind="machine" record={machine} save="Save the machine" someWrong={Object.keys(wrong).length > 0} />
    </form>
  )
}
