export type PadKey = '0' | '1' | '2' | '3' | '4' | '5' | '6' | '7' | '8' | '9' | '.' | ',' | '/' | ' ' | 'mm' | '"' | 'sign' | 'back'

/** A text being typed, with what is selected in it. */
export type Typing = { readonly text: string; readonly start: number; readonly end: number }

/** What one key of the pad makes of it. A unit goes to the end, a sign to the front, all else to where the cursor is. */
export function typedWith(key: PadKey, { text, start, end }: Typing): Typing {
  if (key === 'sign') {
    const signed = /^\s*[-−]/.test(text) ? text.replace(/^\s*[-−]/, '') : `-${text}`
    return { text: signed, start: signed.length, end: signed.length }
  }
  if (key === 'mm' || key === '"') {
    const bare = text.replace(/\s*(mm|")\s*$/, '')
    const united = bare.trim() === '' ? bare : `${bare}${key === 'mm' ? ' mm' : '"'}`
    return { text: united, start: united.length, end: united.length }
  }
  if (key === 'back') return spliced(text, start === end ? Math.max(0, start - 1) : start, end, '')
  return spliced(text, start, end, key)
}

function spliced(text: string, start: number, end: number, put: string): Typing {
  const at = start + put.length
  return { text: text.slice(0, start) + put + text.slice(end), start: at, end: at }
}
