import { useState } from 'react'
import type { Refused } from '#web/parts/read-fields.ts'

type Read<Values> = { readonly values: unknown } | { readonly refused: Refused<Values> }

/** What a form was refused: nothing until it was tried, then what is still wrong after each key. `setTried(false)` begins anew. */
export function useRefused<Values>(read: Read<Values>): readonly [wrong: Refused<Values>, setTried: (tried: boolean) => void] {
  const [tried, setTried] = useState(false)
  return [tried && 'refused' in read ? read.refused : {}, setTried]
}
