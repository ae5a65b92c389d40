import { CommanderError } from 'commander'
import { Refusal } from '#model/refusal.ts'
import { type Out, terminalOut } from '#cli/out.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { plainUnits } from '#words/terms.ts'

/** A refusal already in the words the caller understands: sentences in the shop's units, or data for a program. */
export class SaidRefusal extends Error {}

/**
 * Runs a command and sets the exit code: 0 done, 2 refused (said in a sentence, or as the same JSON that the server answers),
 * 1 a fault of ours. A reader that goes away (`| head`) ends it quietly.
 */
export async function runToItsEnd(work: (out: Out) => Promise<unknown>): Promise<void> {
  process.stdout.on('error', endOnClosedPipe)
  process.stderr.on('error', (error: NodeJS.ErrnoException) => process.exit(error.code === 'EPIPE' ? 0 : 2))
  const out = terminalOut()
  try {
    await work(out)
  } catch (error) {
    process.exitCode = exitCodeOf(error, out)
  }
}

function exitCodeOf(error: unknown, out: Out): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2
  if (error instanceof Refusal) out.say(`${sayRefusal(error, plainUnits)}\n`)
  else if (error instanceof SaidRefusal) out.say(`${error.message}\n`)
  else {
    out.say(`A fault in Twinrest, not in what you gave:\n${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`)
    return 1
  }
  return 2
}

/** A reader that went away has what it wanted; anything else, such as a full disk, is said. */
function endOnClosedPipe(error: NodeJS.ErrnoException): void {
  if (error.code === 'EPIPE') process.exit(0)
  process.stderr.write(`${sayRefusal(new Refusal('file-not-writable', { given: 'Standard output', reason: error.code ?? 'unknown' }), plainUnits)}\n`)
  process.exit(2)
}
