import type { ReactNode } from 'react'
import type { FieldsOf } from '#model/record-fields.ts'
import { Link } from '#web/parts/link.tsx'
import { go } from '#web/router.ts'
import { keepRecord, type OwnedKind } from '#web/shop/record-edit.ts'

type Props<Kind extends OwnedKind> = {
  readonly kind: Kind
  /** Null: it is new. */
  readonly record: (FieldsOf[Kind] & { readonly id: string; readonly name: string }) | null
  readonly save: string
  readonly someWrong: boolean
  /** What else there is to do with one that is kept. */
  readonly children?: ReactNode
}

/** The end of the form of something the shop has: what stands in the way, save, out of use and back, leave. */
export function RecordActions<Kind extends OwnedKind>({ kind, record, save, someWrong, children }: Props<Kind>) {
  const turn = (before: NonNullable<typeof record>) => {
    keepRecord(kind, before, { retired: !before.retired } as Partial<FieldsOf[Kind]>)
    go('/shop')
  }
  return (
    <>
      {someWrong ? <p className="status--danger" role="alert">Nothing was saved yet: see what is marked above.</p> : null}
      <div className="actions">
        <button className="action main">{save}</button>
        {children}
        {record ? <button type="button" className="action" onClick={() => turn(record)}>{record.retired ? 'Take back into use' : 'Retire'}</button> : null}
        <Link to="/shop" className="action">Leave it</Link>
      </div>
    </>
  )
}
