/** Order of texts by code units, which is the same on every device and in every language. */
export const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)

/** Order of things by their ids. */
export const byId = (a: { readonly id: string }, b: { readonly id: string }): number => byText(a.id, b.id)
