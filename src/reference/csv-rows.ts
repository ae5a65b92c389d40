/** For tests: the rows of a published table as text, without its comments and its head. */
export const csvRows = (text: string): readonly (readonly string[])[] =>
  text.split('\n').filter((line) => line !== '' && !line.startsWith('#')).slice(1).map((line) => line.split(','))
