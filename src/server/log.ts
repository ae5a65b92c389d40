/** One thing the operator may want to know: what, and facts about it. Never what a person typed, who they are, or a secret. */
export type LogEntry = { readonly level: 'info' | 'error'; readonly what: string; readonly [fact: string]: string | number }
export type Log = (entry: LogEntry) => void

/** Each entry as one line of JSON with its moment. */
export function jsonLines(write: (line: string) => void): Log {
  return (entry) => write(`${JSON.stringify({ at: new Date().toISOString(), ...entry })}\n`)
}
