import { useState, type FormEvent } from 'react'
import { codeAlphabet } from '#model/code.ts'
import { refreshStanding, useStanding } from '#web/access.ts'
import { ask } from '#web/api.ts'
import { deviceNow } from '#web/device.ts'
import { TextField } from '#web/parts/text-field.tsx'
import { go } from '#web/router.ts'
import { sayTrouble } from '#web/shop/access/say-trouble.ts'
import { outbox, refresh, useShop } from '#web/shop-store.ts'
import { useUnits } from '#web/units.ts'
import '#web/styles/access.css'

const codeLength = 8
const onlyLetters = (text: string): string => text.toUpperCase().replaceAll(new RegExp(`[^${codeAlphabet}]`, 'g'), '').slice(0, codeLength)

/** What a device shows that the shop does not know: a place to type its code. A scanned code is there already. */
export function EnrolScreen() {
  const units = useUnits(), standing = useStanding(), { outbox: { waiting } } = useShop()
  const [code, setCode] = useState(() => onlyLetters(location.hash.slice(1))), [name, setName] = useState('')
  const [trouble, setTrouble] = useState<string | null>(null), [asking, setAsking] = useState(false)
  const type = (text: string) => { setTrouble(null); setCode(onlyLetters(text)) }
  const enrol = async (event: FormEvent) => {
    event.preventDefault()
    if (code.length < codeLength) return setTrouble(`A code has ${codeLength} letters; ${codeLength - code.length} are missing.`)
    if (name.trim() === '') return setTrouble('Give the device a name, such as: tablet at the mill.')
    setAsking(true)
    try {
      await ask('/api/enrol', { code, name: name.trim(), device: deviceNow().id })
      await Promise.all([refresh(), refreshStanding()])
      outbox.nudge()
      go('/setup', { replace: true })
    } catch (error) {
      setTrouble(sayTrouble(error, units))
    } finally { setAsking(false) }
  }
  if (standing?.here || standing?.device) {
    return (
      <div className="page">
        <h1>This device is let in</h1>
        <p>{standing.device ? `It is called ${standing.device.name}.` : 'It is the machine the shop runs on.'}</p>
        <div><button type="button" className="action" onClick={() => go('/setup')}>Go to Set up</button></div>
      </div>
    )
  }
  return (
    <form className="page enrol" onSubmit={(event) => void enrol(event)}>
      <h1>Enrol this device</h1>
      <p>Have a code made on a device that is in the shop already: Shop, Devices, <b>Let in a device</b>; or on the machine itself: <code>twinrest device code</code>. It holds for ten minutes.</p>
      {waiting.length > 0 ? <p><b>{waiting.length === 1 ? 'One thing' : `${waiting.length} things`} done here {waiting.length === 1 ? 'waits' : 'wait'} on this device.</b> Nothing is lost; it is sent as soon as the device is enrolled.</p> : null}
      <div className="enrol-fields">
        <div className="field">
          <input
            id="enrol-code" className="enrol-code" type="text" autoComplete="one-time-code" autoCapitalize="characters" spellCheck={false} inputMode="none"
            value={`${code.slice(0, 4)}${code.length > 4 ? ' ' : ''}${code.slice(4)}`} onChange={(event) => type(event.target.value)}
            aria-invalid={trouble ? true : undefined} aria-describedby={trouble ? 'enrol-trouble' : undefined}
          />
          <label htmlFor="enrol-code">code</label>
        </div>
        <TextField label="name of this device" value={name} onChange={setName} maxLength={40} />
      </div>
      <p className="status--danger enrol-trouble" id="enrol-trouble" role="alert">{trouble}</p>
      <fieldset className="letters" aria-label="Letters of the code">
        {codeAlphabet.split('').map((letter) => <button key={letter} type="button" className="pad-key" disabled={code.length === codeLength} onClick={() => type(code + letter)}>{letter}</button>)}
        <button type="button" className="pad-key letters-back" aria-label="delete" onClick={() => type(code.slice(0, -1))}>⌫</button>
      </fieldset>
      <div className="actions"><button className="action main" disabled={asking}>{asking ? 'Being let in' : 'Enrol this device'}</button></div>
    </form>
  )
}
