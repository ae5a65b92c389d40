/** What can be seen on a bar that is looked at. */
export const barMarks = ['bent', 'nicked', 'drilled', 'magnetised'] as const
