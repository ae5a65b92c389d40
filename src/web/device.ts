import { useSyncExternalStore } from 'react'
import { newId } from '#web/new-id.ts'

/** What belongs to this device and not to the shop. */
export type Device = {
  readonly id: string
  /** Who works here now; null: nobody said. */
  readonly person: { readonly id: string; readonly initials: string } | null
  /** The person was asked once, also when they went on without an answer. */
  readonly asked: boolean
  readonly light: 'auto' | 'light' | 'dark'
  /** When the number pad rises: at a touch, at every field, never. */
  readonly pad: 'touch' | 'always' | 'never'
}

const key = 'twinrest-device'
const listeners = new Set<() => void>()
let device: Device = { id: '', person: null, asked: false, light: 'auto', pad: 'touch', ...kept() }
if (device.id === '') setDevice({ id: newId() })
showLight()

export function deviceNow(): Device {
  return device
}

export function setDevice(part: Partial<Device>): void {
  device = { ...device, ...part }
  try { localStorage.setItem(key, JSON.stringify(device)) } catch { /* A browser that keeps nothing asks again next time. */ }
  showLight()
  for (const tell of listeners) tell()
}

export function useDevice(): Device {
  return useSyncExternalStore((tell) => { listeners.add(tell); return () => listeners.delete(tell) }, deviceNow)
}

function kept(): Partial<Device> {
  try { return JSON.parse(localStorage.getItem(key) ?? '{}') as Partial<Device> } catch { return {} }
}

function showLight(): void {
  if (device.light === 'auto') delete document.documentElement.dataset['theme']
  else document.documentElement.dataset['theme'] = device.light
}
