import { type ComponentType, lazy } from 'react'
import type { ShopSnapshot } from '#model/snapshot.ts'

type BesideScreen = ComponentType<{ readonly shop: ShopSnapshot }>

/** The screens beside the setup, by their step of the address: `/setup/down`. */
export const besideScreens: { readonly [step: string]: BesideScreen } = {
  down: lazy(async () => ({ default: (await import('#web/setup/down/down-screen.tsx')).DownScreen })),
  row: lazy(async () => ({ default: (await import('#web/setup/row/row-screen.tsx')).RowScreen })),
  block: lazy(async () => ({ default: (await import('#web/setup/block/block-screen.tsx')).BlockScreen })),
  day: lazy(async () => ({ default: (await import('#web/setup/day/day-screen.tsx')).DayScreen })),
  fill: lazy(async () => ({ default: (await import('#web/setup/fill/fill-screen.tsx')).FillScreen })),
  table: lazy(async () => ({ default: (await import('#web/setup/table/table-screen.tsx')).TableScreen })),
  chuck: lazy(async () => ({ default: (await import('#web/setup/chuck/chuck-screen.tsx')).ChuckScreen })),
}
