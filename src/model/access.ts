import { z } from 'zod'

/** A device let in: who may talk to the shop from the network. */
export type EnrolledDevice = {
  readonly id: string
  readonly name: string
  readonly atIso: string
  /** From then on it is refused; null: it is let in. */
  readonly revokedAtIso: string | null
}

/** What a device is called in the list, by a person: `tablet at the mill`. */
export const deviceNameSchema = z.string().trim().min(1).max(40)

/** How a caller stands to the shop, as the app is told. */
export const standingSchema = z.object({
  /** Reached on the machine the shop runs on; without a token. */
  here: z.boolean(),
  /** The shop is open to its network. */
  network: z.boolean(),
  /** https, or on the machine itself: what offline work, serial gauges and installing need. */
  secure: z.boolean(),
  device: z.object({ id: z.string(), name: z.string() }).nullable(),
  owner: z.object({
    /** A passphrase was set. */
    set: z.boolean(),
    /** Owner actions are let through to this caller now. */
    unlocked: z.boolean(),
  }),
})
export type Standing = z.infer<typeof standingSchema>
