import { Refusal } from '#model/refusal.ts'

/**
 * What a disk or database says of itself that a person can put right, as a refusal; any other error as it is. Whatever
 * was being written is then not there at all.
 *
 * @returns Refusal `disk-full`, `data-folder-not-writable`, `database-damaged`
 */
export function refusalOf(error: unknown, folder: string): unknown {
  const code = error instanceof Error && 'code' in error ? String(error.code) : ''
  if (/^(SQLITE_FULL|ENOSPC|EDQUOT)/.test(code)) return new Refusal('disk-full', { folder })
  if (/^(SQLITE_(READONLY|CANTOPEN|PERM)|SQLITE_IOERR_(WRITE|FSYNC|SHM)|EROFS|EACCES|EPERM|ENOTDIR)/.test(code)) return new Refusal('data-folder-not-writable', { folder, given: code })
  if (/^SQLITE_(CORRUPT|NOTADB)/.test(code)) return new Refusal('database-damaged', { file: folder, given: (error as Error).message })
  return error
}
