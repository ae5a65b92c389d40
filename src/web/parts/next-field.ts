const fields = 'input:not([type="radio"], [type="checkbox"], [type="file"], :disabled), textarea:not(:disabled)'

/** Moves on to the next field of the form (or of the page where there is no form). False where this was the last. */
export function toNextField(from: HTMLElement): boolean {
  const form = from.closest('form, dialog, main') ?? document.body
  const all = [...form.querySelectorAll<HTMLElement>(fields)].filter((field) => field.checkVisibility())
  const next = all[all.indexOf(from) + 1]
  next?.focus()
  return next !== undefined
}
