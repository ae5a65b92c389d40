import { Refusal } from '#model/refusal.ts'

/** PostgreSQL writes this many milliseconds long for its turn, or at one statement, before it gives up. */
export const turnMs = 15_000
export const statementMs = 30_000

/** Said by sockets and by the driver, which has no codes of its own. */
const lostCodes = /^(ECONN|EPIPE|ETIMEDOUT|ENOTFOUND|EAI_AGAIN|EHOSTUNREACH|ENETUNREACH|ENOENT|08|57P0|53300)/
const lostWords = /Connection terminated|timeout exceeded when trying to connect|connection error and is not queryable|Client was closed/

/** Whether the database went away or has not come yet: the same may be tried again later. */
export function isLost(error: unknown): boolean {
  return lostCodes.test(codeOf(error)) || (error instanceof Error && lostWords.test(error.message))
}

/**
 * What PostgreSQL says of itself that a person can put right, as a refusal; any other error as it is. Whatever was being
 * written was not acknowledged.
 *
 * @returns Refusal `database-away`, `database-refuses`, `database-busy`, `disk-full`, `value-not-allowed`
 * @source POSTGRESQL (appendix: error codes)
 */
export function troubleOf(error: unknown): unknown {
  const code = codeOf(error)
  if (isLost(error) || code === '25006') return new Refusal('database-away', { given: code || (error as Error).message })
  if (/^(28|3D000)/.test(code) || (error as Error).message.startsWith('permission denied')) return new Refusal('database-refuses', { given: (error as Error).message })
  if (code === '55P03') return new Refusal('database-busy', { waitedMs: turnMs })
  if (/^(57014|40001|40P01)$/.test(code)) return new Refusal('database-busy', { waitedMs: statementMs })
  if (code === '53100') return new Refusal('disk-full', { folder: 'PostgreSQL' })
  if (code === '22021') return new Refusal('value-not-allowed', { field: 'text', given: '\\u0000', needed: 'a text without the character of number 0' })
  return error
}

const codeOf = (error: unknown): string => (error instanceof Error && 'code' in error ? String(error.code) : '')
