/** An object without the keys that were left out: a body may carry them as undefined, and the house tells the two apart. */
export function givenOf<Options extends object>(options: Options): { [Key in keyof Options]?: Exclude<Options[Key], undefined> } {
  return Object.fromEntries(Object.entries(options).filter(([, value]) => value !== undefined)) as { [Key in keyof Options]?: Exclude<Options[Key], undefined> }
}
