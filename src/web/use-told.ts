import { useEffect, useRef } from 'react'
import type { Told } from '#model/setup-record.ts'
import { writeTold } from '#web/write.ts'

/**
 * A sheet that was printed is a fact: it is written down once for each print, as the data it was drawn from. Null data: nothing to tell yet.
 * The half-done check of a check sheet is named in its data; null: about nothing but itself.
 */
export function useTold(about: { readonly setupId: string } | { readonly checkId: string } | { readonly jobId: string } | { readonly draftId: string } | null, what: Told['what'], data: object | null): void {
  const { setupId, checkId, jobId, draftId: draft } = { setupId: null, checkId: null, jobId: null, draftId: null, ...about }, latest = useRef(data)
  useEffect(() => { latest.current = data }, [data])
  useEffect(() => {
    const told = () => { if (latest.current !== null) writeTold({ setupId, checkId, jobId, what, data: { ...latest.current, ...(draft === null ? {} : { draft }) } as Told['data'] }) }
    addEventListener('beforeprint', told)
    return () => removeEventListener('beforeprint', told)
  }, [setupId, checkId, jobId, draft, what])
}
