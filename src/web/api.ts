import { type Facts, Refusal } from '#model/refusal.ts'

/** The server does not answer: no network, switched off, or something else stands at its address. */
export class Away extends Error {}

/** The server answers that its machine cannot just now, and why. */
export class Unable extends Away {
  readonly refusal: Refusal
  constructor(refusal: Refusal) {
    super(refusal.code)
    this.refusal = refusal
  }
}

/** The server answered that it failed. `id` finds the entry in its log. */
export class Fault extends Error {
  readonly id: string
  constructor(id: string) {
    super(`fault ${id}`)
    this.id = id
  }
}

const longestMs = 20_000
/** The machine cannot just now (its disk is full, another program writes): nothing was refused, it is to be sent again. */
const unable = 503

/**
 * Asks the shop's server for data.
 *
 * @throws Refusal as the server worded it; `Away` where nothing of ours answers within 20 s; `Unable`; `Fault`
 */
export async function ask<T>(path: string, body?: unknown): Promise<T> {
  return jsonIn(await askText(path, body)) as T
}

/** The same for a text as it stands, such as the rack as CSV. */
export async function askText(path: string, body?: unknown): Promise<string> {
  const { ok, isUnable, text } = await answerOf(path, body)
  if (ok) return text
  const trouble = troubleOf(jsonIn(text))
  throw isUnable && trouble instanceof Refusal ? new Unable(trouble) : trouble
}

async function answerOf(path: string, body: unknown): Promise<{ readonly ok: boolean; readonly isUnable: boolean; readonly text: string }> {
  const request: RequestInit = body === undefined ? {} : { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }
  try {
    const answer = await fetch(path, { ...request, signal: AbortSignal.timeout(longestMs) })
    return { ok: answer.ok, isUnable: answer.status === unable, text: await answer.text() }
  } catch (cause) { throw new Away(path, { cause }) }
}

/** @throws `Away` for what is no JSON: something else answered in the server's place */
export function jsonIn(text: string): unknown {
  try { return JSON.parse(text) } catch (cause) { throw new Away('an answer that is not ours', { cause }) }
}

function troubleOf(body: unknown): Error {
  if (typeof body === 'object' && body !== null) {
    if ('refused' in body && typeof body.refused === 'string') return new Refusal(body.refused, 'facts' in body ? body.facts as Facts : {})
    if ('fault' in body) return new Fault(String(body.fault))
  }
  return new Away('an answer that is not ours')
}
