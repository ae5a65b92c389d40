import { Refusal } from '#model/refusal.ts'
import type { Out } from '#cli/out.ts'
import { parseJson, readStandardInput } from '#cli/read-json.ts'
import { SaidRefusal } from '#cli/run-to-its-end.ts'
import { calc } from '#tasks/calc.ts'

/** A case, or an array of cases, from standard input to its answer on standard output; never opens a database. */
export async function calcCommand(name: string, out: Out): Promise<void> {
  try {
    calc(name, []) // a name nobody knows is refused before anything is waited for
    const text = (await readStandardInput()).toString('utf8')
    if (text.trim() === '') throw new Refusal('no-calculation-input')
    out.answer(`${JSON.stringify(calc(name, parseJson(text)))}\n`)
  } catch (error) {
    throw error instanceof Refusal ? new SaidRefusal(JSON.stringify({ refused: error.code, facts: error.facts })) : error
  }
}
