const prime = 0x01000193

/** FNV-1a, 32 bit, over the code units of a text, as eight hex digits. Of plain ASCII it is that of its bytes. @source FNV */
export function fnv1a(text: string, start = 0x811c9dc5): string {
  let sum = start
  for (let i = 0; i < text.length; i += 1) sum = Math.imul(sum ^ text.charCodeAt(i), prime)
  return (sum >>> 0).toString(16).padStart(8, '0')
}
