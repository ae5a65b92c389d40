import { type Facts, Refusal } from '#model/refusal.ts'

/** The server does not answer: no network, switched off, or something else stands at its address. */
export class Away extends Error {}

/** The server answered that it failed. `id` finds the entry in its log. */
export class Fault extends Error {
  readonly id: string
  constructor(id: string) {
    super(`fault ${id}`)
    this.id = id
  }
}

const longestMs = 20_000

/**
 * Asks the shop's server for data.
 *
 * @throws Refusal as the server worded it; `Away` where nothing of ours answers within 20 s; `Fault`
 */
export async function ask<T>(path: string, body?: unknown): Promise<T> {
  const answer = await reach(path, body)
  return await jsonOf(answer) as T
}

/** The same for a text, such as the rack as CSV. */
export async function askText(path: string): Promise<string> {
  const answer = await reach(path)
  return await answer.text()
}

async function reach(path: string, body?: unknown): Promise<Response> {
  const request: RequestInit = body === undefined ? {} : { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }
  let answer: Response
  try { answer = await fetch(path, { ...request, signal: AbortSignal.timeout(longestMs) }) } catch (cause) { throw new Away(path, { cause }) }
  if (answer.ok) return answer
  throw troubleOf(await jsonOf(answer))
}

async function jsonOf(answer: Response): Promise<unknown> {
  try { return await answer.json() } catch (cause) { throw new Away(answer.url, { cause }) }
}

function troubleOf(body: unknown): Error {
  if (typeof body === 'object' && body !== null) {
    if ('refused' in body && typeof body.refused === 'string') return new Refusal(body.refused, 'facts' in body ? body.facts as Facts : {})
    if ('fault' in body) return new Fault(String(body.fault))
  }
  return new Away('an answer that is not ours')
}
