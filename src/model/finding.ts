import type { Facts } from '#model/refusal.ts'

/** Part of an answer that may be unwelcome, or the reason for it: a code with its facts, worded at the door. */
export type Finding = { readonly code: string; readonly facts: Facts }
