/** Takes the person to the first field that was refused, once the screen shows it. */
export function toFirstWrong(form: HTMLFormElement): void {
  requestAnimationFrame(() => form.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus())
}
