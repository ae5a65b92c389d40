/** Where a command writes: answers to standard output, everything about them to standard error. */
export type Out = {
  readonly answer: (text: string) => void
  readonly say: (text: string) => void
  /** Columns a drawing may take. */
  readonly columns: number
  /** Someone watches standard error, so a line of progress may be drawn over. */
  readonly watched: boolean
}

export function terminalOut(): Out {
  return {
    answer: (text) => { process.stdout.write(text) },
    say: (text) => { process.stderr.write(text) },
    columns: Math.min(process.stdout.columns ?? 80, 120),
    watched: process.stderr.isTTY === true,
  }
}
