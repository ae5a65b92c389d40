/** A sentence in lines of at most so many columns: the first after `lead`, the others under its text. A word longer than a line stays whole. */
export function wrapped(text: string, columns: number, lead = ''): string {
  const indent = ' '.repeat(lead.length), lines: string[] = []
  let line = lead, empty = true
  for (const word of text.split(' ')) {
    if (!empty && line.length + 1 + word.length > columns) {
      lines.push(line)
      line = indent + word
    } else line += empty ? word : ` ${word}`
    empty = false
  }
  return [...lines, line].map((one) => `${one.trimEnd()}\n`).join('')
}
