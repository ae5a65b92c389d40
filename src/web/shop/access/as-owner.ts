import { useState } from 'react'
import { Refusal } from '#model/refusal.ts'
import { sayTrouble } from '#web/shop/access/say-trouble.ts'
import { useUnits } from '#web/units.ts'

/**
 * Does what is for the owner; where the passphrase is asked for, it is done once that was given.
 *
 * @returns `waiting`: what is to be done after the passphrase; null while nobody is asked
 */
export function useAsOwner() {
  const units = useUnits(), [waiting, setWaiting] = useState<(() => Promise<void>) | null>(null), [trouble, setTrouble] = useState<string | null>(null)
  const attempt = async (work: () => Promise<void>) => {
    setTrouble(null)
    try {
      await work()
      setWaiting(null)
    } catch (error) {
      if (error instanceof Refusal && error.code === 'owner-needed') return setWaiting(() => work)
      setWaiting(null)
      setTrouble(sayTrouble(error, units))
    }
  }
  return { attempt: (work: () => Promise<void>) => void attempt(work), waiting, giveUp: () => setWaiting(null), trouble }
}
