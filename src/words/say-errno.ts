const reasons: { readonly [errno: string]: string } = {
  EACCES: 'no right to it',
  EPERM: 'no right to it',
  EROFS: 'it may only be read',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a file stands where a folder should',
  ENOENT: 'its folder is not there',
  ENOSPC: 'no room is left',
  SQLITE_CANTOPEN: 'the database in it cannot be opened',
  SQLITE_READONLY: 'it may only be read',
}

/** Why a file or folder could not be used, from the short name the system has for it; a name without words here is said as it is. */
export function sayErrno(errno: unknown): string {
  return typeof errno === 'string' ? (reasons[errno] ?? errno) : '?'
}
