/** Where sizes of the question stand on the form, as far as their names do not say it. */
const fields: { readonly [path: string]: string } = {
  'part.heightMm': 'height', 'part.diameterMm': 'height', 'part.betweenJawsMm': 'between', 'part.alongJawsMm': 'along',
  xMm: 'along', yMm: 'across',
}

/**
 * The field of a form in which a size of the question was typed: `cuts[0].diameterMm` → `cuts[0].diameter`.
 *
 * @param form  how many lines of cuts it has (the cut after them came from `offTop`), and whether the air is what was
 * typed into `proud`
 */
export function formFieldOf(path: string, form: { readonly lines: number; readonly proud: boolean }): string {
  if (path.startsWith(`cuts[${form.lines}].`)) return 'offTop'
  if (path === 'wishes.airMm' && form.proud) return 'proud'
  if (Object.hasOwn(fields, path)) return fields[path]!
  const [name = '', ...above] = path.replace(/^part\./, '').split('.').toReversed()
  if (above.at(-1) === 'vise') return path
  const bare = above.length > 0 && Object.hasOwn(fields, name) ? fields[name]! : name.replace(/(Mm|Um|Deg)$/, '')
  return [...above.toReversed(), bare].join('.')
}
