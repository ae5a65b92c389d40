import type { ShopSnapshot } from '#model/snapshot.ts'
import { Landing } from '#web/inspect/landing/landing.tsx'
import '#web/styles/inspect.css'

type Props = { readonly shop: ShopSnapshot; readonly rest: readonly string[] }

/** What the readings prove: half-done checks first, then what was proved, and ways to begin. */
export function InspectScreen({ shop, rest: [step] }: Props) {
  switch (step) {
    default: return <Landing shop={shop} />
  }
}
