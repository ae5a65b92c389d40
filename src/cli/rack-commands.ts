import { type Command, Option } from 'commander'
import type { AddOptions } from '#cli/commands/rack-add.ts'
import type { HistoryOptions } from '#cli/commands/rack-history.ts'
import type { ImportOptions } from '#cli/commands/rack-import.ts'
import type { LabelOptions } from '#cli/commands/rack-labels.ts'
import type { LadderOptions } from '#cli/commands/rack-ladder.ts'
import type { LifeOptions } from '#cli/commands/rack-life.ts'
import type { ListOptions } from '#cli/commands/rack-list.ts'
import type { MissingOptions } from '#cli/commands/rack-missing.ts'
import type { BackOptions, OutOptions } from '#cli/commands/rack-out.ts'
import type { RegrindOptions } from '#cli/commands/rack-regrind.ts'
import { dataOption, type JsonOptions, paperOption, unitOption } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'

/** The bars of the shop, under `twinrest rack`. */
export function addRack(program: Command, out: Out): void {
  const rack = program.command('rack').description('The bars of the shop: find, sign out and back, what is missing, files.')
  addRecords(rack, out)
  addDeeds(rack, out)
  addWork(rack, out)
  addPapers(rack, out)
}

/** Which bars there are. */
function addRecords(rack: Command, out: Out): void {
  rack.command('list').description('List bars, lowest first.')
    .option('--height <length>', 'only this height').option('--thickness <length>', 'only this thickness').option('--length <length>', 'only this length')
    .option('--find <text>', 'only bars whose name, code, slot or note holds this').option('--trust <trust>', 'only bars in this state')
    .option('--gone', 'also bars that are gone').option('--json', 'as data').addOption(unitOption()).addOption(dataOption())
    .action(async (options: ListOptions) => { await (await import('#cli/commands/rack-list.ts')).rackListCommand(options, out) })
  rack.command('add').description('Add a bar, or a pair of mates. They enter as "look first", with their sizes as marked.')
    .requiredOption('--height <length>', 'how tall it stands').requiredOption('--thickness <length>', 'its flat size').requiredOption('--length <length>', 'its long size')
    .option('--pair', 'two of them, mates').option('--slot <slot>', 'its place in the rack').option('--name <name>', 'what is marked on it')
    .addOption(unitOption()).addOption(dataOption())
    .addHelpText('after', '\nExamples:\n  twinrest rack add --height 35 --thickness 8 --length 150 --pair --slot B4\n  twinrest rack add --height "1 3/8 in" --thickness 1/4 --length 6 --unit in')
    .action(async (options: AddOptions) => { await (await import('#cli/commands/rack-add.ts')).rackAddCommand(options, out) })
  rack.command('import').argument('<file>', 'CSV file, or a whole rack as JSON; - for standard input').description('Read bars from a file: all of it, or none and every line that is amiss.')
    .option('--dry-run', 'say what would come in, and change nothing')
    .option('--id <id>', 'a name for this file: given again with it, nothing comes in twice').addOption(unitOption()).addOption(dataOption())
    .action(async (file: string, options: ImportOptions) => { await (await import('#cli/commands/rack-import.ts')).rackImportCommand(file, options, out) })
  rack.command('export').argument('[file]', 'left out: standard output').description('Write all bars as CSV; with --json the whole rack, its history and checks, nothing lost.')
    .option('--json', 'the whole rack as data').addOption(dataOption())
    .action(async (file: string | undefined, options: JsonOptions) => { await (await import('#cli/commands/rack-export.ts')).rackExportCommand(file, options, out) })
}

/** What keeps the rack honest. */
function addDeeds(rack: Command, out: Out): void {
  rack.command('find').argument('<text...>', 'as hands type it: 30-32 t8, 35, A3, look first, the text of a label').description('Find bars.')
    .option('--json', 'as data').addOption(dataOption())
    .action(async (text: readonly string[], options: JsonOptions) => { await (await import('#cli/commands/rack-find.ts')).rackFindCommand(text.join(' '), options, out) })
  rack.command('out').argument('[bars...]', 'codes on their labels; left out: who has what now').description('Sign bars out, to one of these; or say who has what.')
    .option('--vise <vise>', 'one of the shop').option('--person <initials>').option('--machine <name>').option('--other-shop <name>').option('--due <day>', 'back by then, such as 2026-03-31')
    .option('--by <initials>', 'who signs').option('--json', 'as data').addOption(dataOption())
    .addHelpText('after', '\nExamples:\n  twinrest rack out ABCD2345 EFGH2345 --person JO --due 2026-03-31\n  twinrest rack out')
    .action(async (bars: readonly string[], options: OutOptions) => { await (await import('#cli/commands/rack-out.ts')).rackOutCommand(bars, options, out) })
  rack.command('back').argument('<bars...>', 'codes on their labels').description('Take bars back into their slots.')
    .addOption(new Option('--how <how>', 'as they came back').choices(['fine', 'nicked', 'drilled', 'not looked at']).default('not looked at'))
    .option('--by <initials>', 'who takes them').option('--json', 'as data').addOption(dataOption())
    .action(async (bars: readonly string[], options: BackOptions) => { await (await import('#cli/commands/rack-out.ts')).rackBackCommand(bars, options, out) })
  rack.command('life').argument('<bar>', 'the code on its label').description('The life of a bar, line by line.')
    .option('--mates', 'with its mates').option('--json', 'as data').addOption(dataOption())
    .action(async (bar: string, options: LifeOptions) => { await (await import('#cli/commands/rack-life.ts')).rackLifeCommand(bar, options, out) })
}

/** What the work asks of the rack. */
function addWork(rack: Command, out: Out): void {
  rack.command('missing').description('What the work asks for and the rack does not have: share served, where the gaps lie, which heights to own next.')
    .option('--vise <vise>', 'one of the shop; left out: all').option('--stacks', 'count two pairs on each other').option('--flat', 'count bars lying flat')
    .option('--step <length>', 'steps of heights to own').option('--thickness <length>', 'of new bars; left out: thin enough for any part').addOption(unitOption()).option('--json', 'as data').addOption(dataOption())
    .action(async (options: MissingOptions) => { await (await import('#cli/commands/rack-missing.ts')).rackMissingCommand(options, out) })
  rack.command('try').argument('<from>').argument('<to>').argument('<step>').argument('<thickness>').argument('<length>').description('Try a set before buying it: what it would serve, which bars stand too high or are too long for the jaws.')
    .option('--vise <vise>').option('--stacks', 'count two pairs on each other').option('--flat', 'count bars lying flat').addOption(unitOption()).option('--json', 'as data').addOption(dataOption())
    .addHelpText('after', '\nExample:\n  twinrest rack try 10 50 5 8 150')
    .action(async (from: string, to: string, setStep: string, setThickness: string, setLength: string, options: MissingOptions) => {
      await (await import('#cli/commands/rack-missing.ts')).rackTryCommand({ from, to, setStep, setThickness, setLength }, options, out)
    })
  rack.command('ladder').argument('<step>').argument('<thickness>').description('A whole ladder of heights for a vise: what to make or buy, without what the rack has.')
    .option('--vise <vise>', 'left out: the only one, or the one used last').option('--vises <count>', 'two mates for each of so many').option('--below <length>', 'the top height under the jaw; left out: 1').option('--lowest <length>', 'left out: 5')
    .option('--under <length>', 'the length under the jaw width; left out: 1').option('--whole', 'also heights that the rack has').addOption(unitOption()).option('--json', 'as data').addOption(dataOption())
    .addHelpText('after', '\nExample:\n  twinrest rack ladder 5 8 --vise "Bench mill" --vises 2 --below 0.5')
    .action(async (step: string, thickness: string, options: LadderOptions) => { await (await import('#cli/commands/rack-ladder.ts')).rackLadderCommand({ step, thickness }, options, out) })
  rack.command('regrind').argument('<bars...>', 'codes; CODE=15 comes out 15 µm lower than the others').description('Worn bars to one new height: what comes off, in how many passes, what it will serve.')
    .option('--both-faces', 'left out: one face').addOption(new Option('--datum <face>', 'with one face: the face taken as true').choices(['A', 'B']))
    .option('--clean-up <µm>', 'off each face at its lowest place; left out: 10').option('--json', 'as data').addOption(dataOption())
    .action(async (bars: readonly string[], options: RegrindOptions) => { await (await import('#cli/commands/rack-regrind.ts')).rackRegrindCommand(bars, options, out) })
}

/** What goes out on paper or into files, and comes back. */
function addPapers(rack: Command, out: Out): void {
  rack.command('labels').argument('[bars...]', 'codes; left out: every bar').description('Strips with a code for bars and slots, on sheets to print.')
    .requiredOption('--svg <file>', 'the first sheet; others are numbered').option('--slots', 'with the slots')
    .addOption(paperOption()).addOption(dataOption())
    .action(async (bars: readonly string[], options: LabelOptions) => { await (await import('#cli/commands/rack-labels.ts')).rackLabelsCommand(bars, options, out) })
  rack.command('history').argument('[file]', 'left out: standard output').description('Write what happened to all bars as CSV; with --in take such a file in.')
    .option('--in', 'take the file in').option('--dry-run', 'say what would come in, and change nothing').addOption(dataOption())
    .action(async (file: string | undefined, options: HistoryOptions) => { await (await import('#cli/commands/rack-history.ts')).rackHistoryCommand(file, options, out) })
}
