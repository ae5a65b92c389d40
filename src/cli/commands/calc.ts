import { Refusal } from '#model/refusal.ts'
import { inColumns } from '#cli/columns.ts'
import type { Out } from '#cli/out.ts'
import { parseJson, readStandardInput } from '#cli/read-json.ts'
import { SaidRefusal } from '#cli/run-to-its-end.ts'
import { askCalc, calculationTitles } from '#tasks/ask-calc.ts'

/** Without a name the calculations there are. With one: a case, or an array of cases, from standard input to its answer on standard output; never opens a database. */
export async function calcCommand(name: string | undefined, out: Out): Promise<void> {
  if (name === undefined) {
    out.answer(inColumns(calculationTitles.map(([known, title]) => [known, title])))
    return
  }
  try {
    await askCalc(name, []) // a name nobody knows is refused before anything is waited for
    const text = (await readStandardInput()).toString('utf8')
    if (text.trim() === '') throw new Refusal('no-calculation-input')
    out.answer(`${JSON.stringify(await askCalc(name, parseJson(text)))}\n`)
  } catch (error) {
    throw error instanceof Refusal ? new SaidRefusal(JSON.stringify({ refused: error.code, facts: error.facts })) : error
  }
}
