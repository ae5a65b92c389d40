import { useSyncExternalStore } from 'react'
import { deviceNow } from '#web/device.ts'

/** The field the number pad types into; null: the pad is down. */
let padField: HTMLInputElement | null = null
let lastPointer = matchMedia('(pointer: coarse)').matches ? 'touch' : 'mouse'
/** A press has begun whose click is still to come. */
let pressing = false
const listeners = new Set<() => void>(), afterPress = new Set<() => void>()

addEventListener('pointerdown', (event) => { lastPointer = event.pointerType }, { capture: true })
addEventListener('mousedown', () => { pressing = true }, { capture: true })
for (const end of ['mouseup', 'dragend']) addEventListener(end, () => { pressing = false; setTimeout(lowerNow) }, { capture: true })

export function usePadField(): HTMLInputElement | null {
  return useSyncExternalStore((tell) => { listeners.add(tell); return () => listeners.delete(tell) }, () => padField)
}

/** Raises the pad for a field that was come to, if this person at this device wants one. */
export function raisePad(field: HTMLInputElement): void {
  if (wantsPad()) setPadField(field)
}

export function lowerPad(): void {
  setPadField(null)
}

/**
 * Lowers the pad once the press that took the cursor out of its field is over: the page ends higher without the pad, and would
 * slide from under the finger between the press and its click.
 */
export function lowerPadAfterPress(left: HTMLInputElement): void {
  const lower = () => { if (padField === left && document.activeElement !== left) lowerPad() }
  if (pressing) afterPress.add(lower)
  else lower()
}

/** `none` keeps the tablet's own keyboard down where ours rises. */
export function inputModeNow(): 'none' | 'decimal' {
  const { pad } = deviceNow()
  return pad === 'always' || (pad === 'touch' && matchMedia('(any-pointer: coarse)').matches) ? 'none' : 'decimal'
}

function wantsPad(): boolean {
  const { pad } = deviceNow()
  return pad === 'always' || (pad === 'touch' && lastPointer !== 'mouse')
}

function lowerNow(): void {
  for (const lower of afterPress) lower()
  afterPress.clear()
}

function setPadField(field: HTMLInputElement | null): void {
  if (field === padField) return
  padField = field
  for (const tell of listeners) tell()
}
