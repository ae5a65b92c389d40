import type { ComponentType } from 'react'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { arriving } from '#web/parts/arriving.ts'

type BesideScreen = ComponentType<{ readonly shop: ShopSnapshot }>

/** The screens beside the setup, by their step of the address: `/setup/down`. */
export const besideScreens: { readonly [step: string]: BesideScreen } = {
  down: arriving(async () => (await import('#web/setup/down/down-screen.tsx')).DownScreen),
  row: arriving(async () => (await import('#web/setup/row/row-screen.tsx')).RowScreen),
  block: arriving(async () => (await import('#web/setup/block/block-screen.tsx')).BlockScreen),
  day: arriving(async () => (await import('#web/setup/day/day-screen.tsx')).DayScreen),
  fill: arriving(async () => (await import('#web/setup/fill/fill-screen.tsx')).FillScreen),
  table: arriving(async () => (await import('#web/setup/table/table-screen.tsx')).TableScreen),
  chuck: arriving(async () => (await import('#web/setup/chuck/chuck-screen.tsx')).ChuckScreen),
}
