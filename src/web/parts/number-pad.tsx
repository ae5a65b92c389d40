import { type ReactNode, useEffect, useRef, useState } from 'react'
import { toNextField } from '#web/parts/next-field.ts'
import { type PadKey, typedWith } from '#web/parts/pad-key.ts'
import { lowerPad, usePadField } from '#web/parts/pad-state.ts'

type Face = readonly [key: PadKey, face: string, said?: string]

const rows: readonly [readonly Face[], readonly Face[], readonly Face[], readonly Face[]] = [
  [['7', '7'], ['8', '8'], ['9', '9'], ['/', '/', 'over'], ['back', '⌫', 'delete']],
  [['4', '4'], ['5', '5'], ['6', '6'], [' ', '␣', 'space'], ['sign', '−', 'minus']],
  [['1', '1'], ['2', '2'], ['3', '3'], ['mm', 'mm', 'millimetres, mm']],
  [[',', ',', 'comma'], ['0', '0'], ['.', '.', 'point'], ['"', 'in', 'inches, in']],
]

/**
 * The one number pad. It rises in the right half (at the bottom edge of a phone), always in the same place, and types
 * into the field without taking the cursor out of it, so that hand, keyboard and gauge can take turns.
 */
export function NumberPad() {
  const field = usePadField(), pad = useRef<HTMLFieldSetElement>(null)
  useEffect(() => {
    document.documentElement.style.setProperty('--pad-height', `${pad.current?.offsetHeight ?? 0}px`)
    field?.scrollIntoView({ block: 'nearest' })
  }, [field])
  return field ? <fieldset className="pad" ref={pad} aria-label={`Number pad: ${field.labels?.[0]?.textContent ?? ''}`}><Keys key={field.id} field={field} /></fieldset> : null
}

function Keys({ field }: { readonly field: HTMLInputElement }) {
  const [said, setSaid] = useState('')
  const done = () => { lowerPad(); field.blur() }
  const faces = (row: readonly Face[]) => row.map(([key, face, name]) => (
    <Key key={key} field={field} name={name} onPress={() => setSaid(typeInto(field, key))}>{face}</Key>
  ))
  return (
    <>
      {faces(rows[0])}
      {faces(rows[1])}
      {faces(rows[2])}
      <Key field={field} main onPress={() => { if (!toNextField(field)) done() }}>next</Key>
      {faces(rows[3])}
      <Key field={field} onPress={done}>done</Key>
      <output className="unseen">{said}</output>
    </>
  )
}

type KeyProps = { readonly field: HTMLInputElement; readonly name?: string | undefined; readonly main?: boolean; readonly onPress: () => void; readonly children: ReactNode }

/** A press leaves the cursor in the field; whoever came here by keyboard goes back to it with Escape. */
function Key({ field, name, main, onPress, children }: KeyProps) {
  return (
    <button
      type="button" className={main ? 'pad-key pad-next' : 'pad-key'} aria-label={name} onClick={onPress}
      onPointerDown={(event) => event.preventDefault()} onMouseDown={(event) => event.preventDefault()}
      onKeyDown={(event) => { if (event.key === 'Escape') { field.focus(); lowerPad() } }}
      onBlur={({ relatedTarget: to }) => { if (to !== field && !(to instanceof HTMLElement && to.closest('.pad'))) lowerPad() }}
    >{children}</button>
  )
}

/** Types as the person's own keyboard would, so that the field's owner hears of it in the usual way. */
function typeInto(field: HTMLInputElement, key: PadKey): string {
  const { value, selectionStart, selectionEnd } = field
  const typed = typedWith(key, { text: value, start: selectionStart ?? value.length, end: selectionEnd ?? value.length })
  if (typed.text.length > field.maxLength) return value
  field.setRangeText(typed.text, 0, value.length, 'end')
  field.dispatchEvent(new InputEvent('input', { bubbles: true }))
  field.setSelectionRange(typed.start, typed.end)
  return typed.text
}
