import { useSyncExternalStore } from 'react'
import { deviceNow } from '#web/device.ts'

/** The field the number pad types into; null: the pad is down. */
let padField: HTMLInputElement | null = null
let lastPointer = matchMedia('(pointer: coarse)').matches ? 'touch' : 'mouse'
const listeners = new Set<() => void>()

addEventListener('pointerdown', (event) => { lastPointer = event.pointerType }, { capture: true })

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

/** `none` keeps the tablet's own keyboard down where ours rises. */
export function inputModeNow(): 'none' | 'decimal' {
  const { pad } = deviceNow()
  return pad === 'always' || (pad === 'touch' && matchMedia('(any-pointer: coarse)').matches) ? 'none' : 'decimal'
}

function wantsPad(): boolean {
  const { pad } = deviceNow()
  return pad === 'always' || (pad === 'touch' && lastPointer !== 'mouse')
}

function setPadField(field: HTMLInputElement | null): void {
  if (field === padField) return
  padField = field
  for (const tell of listeners) tell()
}
