import type { ReactNode } from 'react'
import { type Placed, spotStyle } from '#web/setup/sheet/spot-style.ts'

export type SpotProps = {
  readonly value: ReactNode
  readonly label: string
  /** The whole of it, for those who do not see where it stands. */
  readonly said: string
  readonly open?: boolean
  readonly placed?: Placed | undefined
  readonly id?: string
  readonly onPress: () => void
}

/** Something of the drawing to touch that is no number: it looks like the fields, a value over its name. */
export function SpotButton({ value, label, said, open, placed, id, onPress }: SpotProps) {
  return (
    <button
      type="button" id={id} className={placed ? 'setup-button setup-spot' : 'setup-button'} style={placed && spotStyle(placed)}
      aria-label={said} aria-expanded={open} onClick={onPress}
    >
      <strong>{value}</strong><span>{label}</span>
    </button>
  )
}
