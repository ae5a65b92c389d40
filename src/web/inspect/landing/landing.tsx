import type { ShopSnapshot } from '#model/snapshot.ts'
import { AskPerson } from '#web/shell/ask-person.tsx'

/** Where a check begins, goes on, or is looked up again. */
export function Landing({ shop }: { readonly shop: ShopSnapshot }) {
  return (
    <>
      <AskPerson />
      <div className="page"><h1>Inspect</h1>{shop.drafts.length > 0 ? <p>{shop.drafts.length} half done</p> : null}</div>
    </>
  )
}
