import type { SetupRecord } from '#model/setup-record.ts'

/** The last setups of a vise that are still kept, latest first: what *same as last time* offers. */
export function sameAgain(setups: readonly SetupRecord[], viseId: string, most = 5): readonly SetupRecord[] {
  return setups
    .filter((setup) => setup.viseId === viseId && !setup.retired)
    .toSorted((a, b) => (a.usedAtIso < b.usedAtIso ? 1 : a.usedAtIso > b.usedAtIso ? -1 : 0))
    .slice(0, most)
}

/** The vise of the latest setup, else the first that is in use; null where the shop has none. */
export function lastViseId(setups: readonly SetupRecord[], vises: readonly { readonly id: string; readonly retired: boolean }[]): string | null {
  const inUse = new Set(vises.filter(({ retired }) => !retired).map(({ id }) => id))
  const latest = setups.filter(({ viseId }) => inUse.has(viseId)).reduce<SetupRecord | null>((last, setup) => (last === null || setup.usedAtIso > last.usedAtIso ? setup : last), null)
  return latest?.viseId ?? [...inUse][0] ?? null
}
