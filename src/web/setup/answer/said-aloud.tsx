import { useEffect, useState } from 'react'

const pauseMs = 700

/** Reads a text out once nothing has changed for a moment, so that typing is not talked over. */
export function SaidAloud({ text }: { readonly text: string }) {
  const [said, setSaid] = useState('')
  useEffect(() => {
    const later = setTimeout(() => setSaid(text), pauseMs)
    return () => clearTimeout(later)
  }, [text])
  return <output className="unseen" aria-live="polite">{said}</output>
}
