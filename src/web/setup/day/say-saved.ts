import type { SetupRecord } from '#model/setup-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { ViseRecord } from '#model/vise-record.ts'
import { sayPart } from '#web/setup/saved/say-setup.ts'

/** A setup without a name of its own is called by its part. */
export const isNamed = ({ title, operation }: SetupRecord): boolean => title !== '' || operation !== ''

export const nameOfSetup = (setup: SetupRecord): string => (isNamed(setup) ? [setup.title, setup.operation].filter((text) => text !== '').join(', ') : sayPart(setup.form))

export const viseOf = ({ vises }: ShopSnapshot, { viseId }: SetupRecord): ViseRecord | undefined => vises.find(({ id }) => id === viseId)
