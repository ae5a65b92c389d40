/** A size on a disk, to two figures or so: `812 KiB`, `3.4 MiB`. */
export function saySize(bytes: number): string {
  const [size, unit] = bytes < 1024 ** 2 ? [bytes / 1024, 'KiB'] : bytes < 1024 ** 3 ? [bytes / 1024 ** 2, 'MiB'] : [bytes / 1024 ** 3, 'GiB']
  return `${size < 10 ? size.toFixed(1) : Math.round(size)} ${unit}`
}

/** How long ago something was, in whole minutes, hours or days. A moment still to come, by a clock that is behind, is just now. */
export function sayAge(atIso: string, nowMs: number): string {
  const minutes = Math.floor((nowMs - Date.parse(atIso)) / 60_000), [count, unit] = minutes < 60 ? [minutes, 'minute'] : minutes < 2880 ? [Math.floor(minutes / 60), 'hour'] : [Math.floor(minutes / 1440), 'day']
  return count < 1 ? 'just now' : `${count} ${unit}${count === 1 ? '' : 's'} ago`
}
