import { createInterface } from 'node:readline'
import { Writable } from 'node:stream'
import type { Out } from '#cli/out.ts'
import { Refusal } from '#model/refusal.ts'

/**
 * One line of standard input for each question; at a terminal nothing of it is shown.
 *
 * @throws Refusal `option-empty` where the input ends before
 */
export async function readSecret(questions: readonly string[], out: Out): Promise<readonly string[]> {
  const nowhere = new Writable({ write: (_chunk, _encoding, done) => done() })
  const reader = createInterface({ input: process.stdin, output: nowhere, terminal: process.stdin.isTTY === true }), lines = reader[Symbol.asyncIterator](), typed: string[] = []
  // The terminal hands its keys over raw, Ctrl-C among them.
  reader.once('SIGINT', () => { out.say('\n'); process.exit(130) })
  try {
    for (const question of questions) {
      out.say(question)
      const { value, done } = await lines.next()
      if (question !== '') out.say('\n')
      if (done) throw new Refusal('option-empty', { given: 'The passphrase' })
      typed.push(value)
    }
  } finally { reader.close() }
  return typed
}
