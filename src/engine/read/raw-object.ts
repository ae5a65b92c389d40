import type { Complaints } from '#engine/read/complaints.ts'

/** mm. Longer than any workpiece or machine; beyond it a length is a slip of the pen. */
export const longestMm = 1e6

/**
 * One object of a raw case on its way to typed values.
 *
 * A key given as null counts as left out; only the object's own keys count. What is wrong goes to the complaints, and a
 * stand-in is returned so that the rest can be read. Keys never asked for are the unknown ones: `close` notes them.
 */
export class RawObject {
  readonly path: string
  readonly #own: ReadonlyMap<string, unknown>
  readonly #asked = new Set<string>()
  readonly #complaints: Complaints

  constructor(complaints: Complaints, path: string, value: object) {
    this.path = path
    this.#complaints = complaints
    this.#own = new Map(Object.entries(value).filter(([, inside]) => inside !== null && inside !== undefined))
  }

  /** Whether the key is there and not null. Asking makes it a known key. */
  has(key: string): boolean {
    this.#asked.add(key)
    return this.#own.has(key)
  }

  /** A number that has to be there, at most `most` away from 0. */
  number(key: string, most = longestMm): number {
    return this.has(key) ? this.#numberAt(key, most) : this.#missing(key, 'number', NaN)
  }

  numberOr<Other>(key: string, other: Other, most = longestMm): number | Other {
    return this.has(key) ? this.#numberAt(key, most) : other
  }

  /** A number, or the one word that may stand in its place. */
  numberOrWord<Word extends string>(key: string, word: Word, other: number | Word): number | Word {
    if (!this.has(key)) return other
    return this.#own.get(key) === word ? word : this.#numberAt(key, longestMm, ['a number', word])
  }

  /** A whole number from 0 that has to be there. */
  count(key: string): number {
    return this.has(key) ? this.countOr(key, NaN) : this.#missing(key, 'a whole number from 0', NaN)
  }

  /** A whole number from 0, if given. */
  countOr<Other>(key: string, other: Other): number | Other {
    if (!this.has(key)) return other
    const value = this.#own.get(key)
    if (typeof value === 'number' && Number.isInteger(value) && value >= 0) return value
    this.#complaints.add('not-a-number', this.#pathOf(key), value, 'a whole number from 0')
    return other
  }

  /** A word that has to be there; null where it is not, or is none of these. */
  word<Word extends string>(key: string, words: readonly Word[]): Word | null {
    return this.has(key) ? this.#wordAt(key, words) : this.#missing(key, [...words], null)
  }

  wordOr<Word extends string>(key: string, words: readonly Word[], other: Word): Word {
    return (this.has(key) ? this.#wordAt(key, words) : null) ?? other
  }

  yesNoOr(key: string, other: boolean): boolean {
    if (!this.has(key)) return other
    const value = this.#own.get(key)
    if (typeof value === 'boolean') return value
    this.#complaints.add('unknown-word', this.#pathOf(key), value, [true, false])
    return true
  }

  /** Free text such as an id, which has to be there and must not be empty. */
  text(key: string): string {
    const value = this.has(key) ? this.#own.get(key) : undefined
    return typeof value === 'string' && value !== '' ? value : this.#missing(key, 'a text', '')
  }

  /** An object that has to be there; null where it is not, and nothing inside it is then complained about. */
  object<Value>(key: string, read: (object: RawObject) => Value): Value | null {
    if (this.has(key)) return this.#objectAt(key, this.#own.get(key), read)
    return this.#missing(key, 'an object', null)
  }

  objectOr<Value, Other>(key: string, read: (object: RawObject) => Value, other: Other): Value | Other {
    return this.has(key) ? (this.#objectAt(key, this.#own.get(key), read) ?? other) : other
  }

  /** A list of objects that has to be there; entries that are no objects are complained about, null ones left out. */
  list<Value>(key: string, read: (object: RawObject) => Value | null, most = Infinity): Value[] {
    return this.#valuesAt(key, true, most, (path, value) => this.#objectAt(path, value, read))
  }

  listOrEmpty<Value>(key: string, read: (object: RawObject) => Value | null, most = Infinity): Value[] {
    return this.#valuesAt(key, false, most, (path, value) => this.#objectAt(path, value, read))
  }

  /** A list of words, if given, each once. */
  wordsOr<Word extends string>(key: string, words: readonly Word[], other: readonly Word[]): readonly Word[] {
    if (!this.has(key)) return other
    const isWord = (value: unknown): value is Word => words.includes(value as Word)
    return [...new Set(this.#valuesAt(key, true, Infinity, (path, value) => {
      if (isWord(value)) return value
      this.#complaints.add('unknown-word', this.#pathOf(path), value, [...words])
      return null
    }))]
  }

  textsOr<Other>(key: string, other: Other): readonly string[] | Other {
    if (!this.has(key)) return other
    return this.#valuesAt(key, true, Infinity, (path, value) => {
      if (typeof value === 'string') return value
      return this.#missing(path, 'a text', null, value)
    })
  }

  /** A list of numbers that has to be there, each at most `most` away from 0. */
  numbers(key: string, most = longestMm, longest = Infinity): number[] {
    return this.#valuesAt(key, true, longest, (path, value) => this.#numberFrom(path, value, most))
  }

  numbersOr<Other>(key: string, other: Other, most = longestMm): number[] | Other {
    return this.has(key) ? this.numbers(key, most) : other
  }

  /** A list of lists of numbers that has to be there. */
  numberLists(key: string, most = longestMm, longest = Infinity): number[][] {
    return this.#valuesAt(key, true, longest, (path, value) => this.#numbersIn(path, value, most))
  }

  /** The same one level deeper: readings by line, station and repeat. */
  numberTables(key: string, most = longestMm, longest = Infinity): number[][][] {
    return this.#valuesAt(key, true, longest, (path, value) => this.#valuesIn(path, value, Infinity, (inside, row) => this.#numbersIn(inside, row, most)))
  }

  /** Rows of as many numbers as there are limits, each at most its limit away from 0; the list has to be there. */
  rows(key: string, limits: readonly number[], longest = Infinity): number[][] {
    return this.#valuesAt(key, true, longest, (path, value) => this.#rowIn(path, value, limits))
  }

  rowsOrEmpty(key: string, limits: readonly number[], longest = Infinity): number[][] {
    return this.#valuesAt(key, false, longest, (path, value) => this.#rowIn(path, value, limits))
  }

  /** One such row, if given. */
  rowOr<Other>(key: string, limits: readonly number[], other: Other): number[] | Other {
    return this.has(key) ? (this.#rowIn(key, this.#own.get(key), limits) ?? other) : other
  }

  /** Two texts that have to be there. */
  twoTexts(key: string): readonly [string, string] {
    const value = this.has(key) ? this.#own.get(key) : undefined
    const isTwo = (list: unknown): list is [string, string] => Array.isArray(list) && list.length === 2 && list.every((one) => typeof one === 'string')
    return isTwo(value) ? value : this.#missing(key, 'two names', ['', ''], value)
  }

  /** A list of pairs of numbers that has to be there. */
  pairs(key: string, most = longestMm, longest = Infinity): (readonly [number, number])[] {
    return this.#valuesAt(key, true, longest, (path, value): readonly [number, number] | null => {
      if (!Array.isArray(value) || value.length !== 2) return this.#missing(path, 'a pair of numbers', null, value)
      return [this.#numberFrom(`${path}[0]`, value[0], most), this.#numberFrom(`${path}[1]`, value[1], most)]
    })
  }

  pairsOr<Other>(key: string, other: Other, most = longestMm, longest = Infinity): readonly (readonly [number, number])[] | Other {
    return this.has(key) ? this.pairs(key, most, longest) : other
  }

  /** Notes the keys that nobody asked for. To be called once, when all known keys have been read. */
  close(): void {
    for (const key of this.#own.keys()) if (!this.#asked.has(key)) this.#complaints.ignored.push(this.#pathOf(key))
  }

  #numberAt(key: string, most: number, needed: string | readonly string[] = 'number'): number {
    return this.#numberFrom(key, this.#own.get(key), most, needed)
  }

  #numberFrom(key: string, value: unknown, most: number, needed: string | readonly string[] = 'number'): number {
    if (typeof value !== 'number' || !Number.isFinite(value)) this.#complaints.add('not-a-number', this.#pathOf(key), value, needed)
    else if (Math.abs(value) > most) this.#complaints.add('too-large', this.#pathOf(key), value, key.endsWith('Mm') ? { mostMm: most } : { most })
    else return value
    return NaN
  }

  #wordAt<Word extends string>(key: string, words: readonly Word[]): Word | null {
    const value = this.#own.get(key), word = words.find((known) => known === value)
    if (word === undefined) this.#complaints.add('unknown-word', this.#pathOf(key), value, [...words])
    return word ?? null
  }

  #objectAt<Value>(key: string, value: unknown, read: (object: RawObject) => Value): Value | null {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return this.#missing(key, 'an object', null, value)
    const object = new RawObject(this.#complaints, this.#pathOf(key), value), result = read(object)
    object.close()
    return result
  }

  #valuesAt<Value>(key: string, needed: boolean, most: number, read: (path: string, value: unknown) => Value | null): Value[] {
    const value = this.has(key) ? this.#own.get(key) : undefined
    if (value === undefined) return needed ? this.#missing(key, 'a list', []) : []
    return this.#valuesIn(key, value, most, read)
  }

  #numbersIn(path: string, value: unknown, most: number): number[] {
    return this.#valuesIn(path, value, Infinity, (inside, one) => this.#numberFrom(inside, one, most))
  }

  #valuesIn<Value>(path: string, value: unknown, most: number, read: (path: string, value: unknown) => Value | null): Value[] {
    if (!Array.isArray(value)) return this.#missing(path, 'a list', [], value)
    if (value.length > most) this.#complaints.add('too-many', this.#pathOf(path), value.length, most)
    const values: Value[] = []
    for (let k = 0; k < value.length; k += 1) {
      const result = read(`${path}[${k}]`, value[k])
      if (result !== null) values.push(result)
    }
    return values
  }

  #rowIn(path: string, value: unknown, limits: readonly number[]): number[] | null {
    if (!Array.isArray(value) || value.length !== limits.length) return this.#missing(path, `a list of ${limits.length} numbers`, null, value)
    return limits.map((most, k) => this.#numberFrom(`${path}[${k}]`, value[k], most))
  }

  #missing<Value>(key: string, needed: string | readonly string[], standIn: Value, given: unknown = this.#own.get(key)): Value {
    this.#complaints.add('field-missing', this.#pathOf(key), given, needed)
    return standIn
  }

  #pathOf(key: string): string {
    return this.path === '' ? key : `${this.path}.${key}`
  }
}
