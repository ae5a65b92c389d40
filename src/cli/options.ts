import { Option } from 'commander'
import type { LengthUnit } from '#model/length.ts'

/** What every command takes that opens a shop. */
export type DataOptions = { readonly data?: string }
/** The same, of a command that also answers as data. */
export type JsonOptions = DataOptions & { readonly json?: true }
export type UnitOptions = { readonly unit?: LengthUnit }
export type PaperOptions = { readonly paper?: 'A4' | 'Letter' }

export const dataOption = (): Option => new Option('--data <folder>', 'folder of the shop\'s database')
export const unitOption = (): Option => new Option('--unit <unit>', 'unit of numbers without one; left out: the shop\'s').choices(['mm', 'in'])
export const paperOption = (): Option => new Option('--paper <paper>', 'left out: the shop\'s').choices(['A4', 'Letter'])
export const viseOption = (): Option => new Option('--vise <vise>', 'its name or id; left out: the only one, or the one used last')
export const backupsOption = (): Option => new Option('--backups <folder>', 'folder of the backups; left out: TWINREST_BACKUPS, or backups in the data folder')

/** Keeps what an option was given before: it may be given again. */
export const several = (one: string, before: readonly string[] | undefined): readonly string[] => [...before ?? [], one]
