import { type Command, Option } from 'commander'
import type { ExportChecksOptions } from '#cli/commands/inspect-export.ts'
import type { ImportChecksOptions } from '#cli/commands/inspect-import.ts'
import type { MatesOptions } from '#cli/commands/inspect-mates.ts'
import type { RecordOptions } from '#cli/commands/inspect-record.ts'
import type { ShowOptions } from '#cli/commands/inspect-show.ts'
import { dataOption, several, unitOption } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'

/** Readings and what they prove, under `twinrest inspect`. */
export function addInspect(program: Command, out: Out): void {
  const inspect = program.command('inspect').description('Checks at the plate and by micrometer: record, show, export, import, find mates.')
  inspect.command('record').argument('[file]', 'CSV with bar and reading, in the order the bars were moved; - for standard input')
    .description('Keep a check and say what it proves.')
    .addOption(new Option('--method <method>', 'how it was read').choices(['compare', 'micrometer', 'turn-over', 'stated']).default('compare'))
    .option('--bar <readings>', 'a bar and its readings from the marked end, instead of a file; may be given again', several)
    .option('--zero <height>', 'height of the block the indicator was zeroed on').option('--zero-bar <bar>', 'the bar it was zeroed on instead').option('--closing <reading>', 'the zero read again at the end')
    .option('--instrument <name>', 'what was read with; without it nothing is proved').option('--plate <name>', 'the surface plate').option('--blocks <name>', 'the gauge blocks')
    .option('--temperature <°C>', 'at the plate').option('--place <length>', 'where a station is from the marked end; once for each', several)
    .option('--replaces <check>', 'the check that this one corrects').option('--as-found', 'before anything was done to the bars').option('--note <text>').option('--person <initials>', 'who read it')
    .addOption(unitOption()).option('--dry-run', 'work it out and keep nothing').option('--json', 'as data').addOption(dataOption())
    .addHelpText('after', `
A bar is given by the code on its label. Readings of an indicator without a unit are in micrometres (in inches with --unit in); with a unit they are that.

Examples:
  twinrest inspect record --zero 25 --instrument "Lever indicator, 1 µm" --bar "ABCD2345 +3 +4 +2" --bar "EFGH2345 +6 +5 +4"
  twinrest inspect record readings.csv --zero 25,000 --closing 0 --temperature 21 --dry-run`)
    .action(async (file: string | undefined, { place, ...options }: RecordOptions & { place?: readonly string[] }) => {
      await (await import('#cli/commands/inspect-record.ts')).inspectRecordCommand(file, { ...options, ...(place ? { places: place } : {}) }, out)
    })
  inspect.command('show').argument('[check]', 'left out: lists the checks there are').description('A check: bars, pair, what is proved, what to look at again.')
    .option('--all', 'in the list, also those that only say what is marked').option('--json', 'as data').addOption(dataOption())
    .action(async (id: string | undefined, options: ShowOptions) => { await (await import('#cli/commands/inspect-show.ts')).inspectShowCommand(id, options, out) })
  inspect.command('export').argument('[file]', 'left out: standard output').description('Write checks as CSV, all of them and nothing lost.')
    .option('--check <check>', 'only this one').option('--json', 'as data instead').addOption(dataOption())
    .action(async (file: string | undefined, options: ExportChecksOptions) => { await (await import('#cli/commands/inspect-export.ts')).inspectExportCommand(file, options, out) })
  inspect.command('import').argument('<file>', 'CSV or JSON as exported; - for standard input').description('Read checks: all of them, or none and every line that is amiss.')
    .option('--dry-run', 'say what would come in, and change nothing').addOption(dataOption())
    .action(async (file: string, options: ImportChecksOptions) => { await (await import('#cli/commands/inspect-import.ts')).inspectImportCommand(file, options, out) })
  inspect.command('mates').description('The best pairs out of the measured bars, with direction and what each is fit for.')
    .option('--within <µm>', 'as many pairs as differ by no more; left out: the shop\'s limit for milling').option('--vises <count>', 'instead: two bars for each of so many vises, all as equal as they can be')
    .option('--bar <bar>', 'only among these; may be given again', several).option('--json', 'as data').addOption(dataOption())
    .action(async (options: MatesOptions) => { await (await import('#cli/commands/inspect-mates.ts')).inspectMatesCommand(options, out) })
}
