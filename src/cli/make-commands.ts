import { type Command, Option } from 'commander'
import { routeKinds } from '#model/route.ts'
import { uses } from '#model/wishes.ts'
import type { MakeRegrindOptions } from '#cli/commands/make-regrind.ts'
import type { RoutesOptions } from '#cli/commands/make-routes.ts'
import { dataOption, type JsonOptions, unitOption } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'

/** From missing heights to bars, under `twinrest make`. */
export function addMake(program: Command, out: Out): void {
  const make = program.command('make').description('Make bars: the ways to an order, jobs, cut lists.')
  make.command('routes').description('The ways to an order side by side, with the machines and the stock of the shop; --take keeps one as a job.')
    .option('--heights <heights>', 'one or several, a space or semicolon between').option('--ladder <from-to>', 'heights in steps, such as 12-44').option('--step <length>', 'from one height to the next')
    .option('--below-jaw <height>', 'heights in steps down from a jaw of this height')
    .requiredOption('--thickness <length>', 'of the bars').option('--length <length>', 'of the bars').option('--jaw-width <length>', 'one millimetre shorter than jaws of this width')
    .option('--pairs <count>', 'of each height in each vise', '1').option('--vises <count>', 'for so many', '1').addOption(new Option('--use <use>', 'what they have to be good for').choices(uses).default('milling'))
    .option('--hrc <hardness>', 'left out: soft will do').option('--due <day>', 'such as 2026-03-04').option('--faces', 'the faces are worked too').option('--offer <price>', 'of all, bought')
    .addOption(new Option('--take <way>', 'keep the order and this way as a job').choices(routeKinds)).option('--name <name>', 'of the job').option('--person <initials>', 'who took it')
    .addOption(unitOption()).option('--json', 'as data').addOption(dataOption())
    .addHelpText('after', `
Examples:
  twinrest make routes --ladder 12-44 --step 2 --thickness 4 --pairs 2 --jaw-width 125
  twinrest make routes --heights 30 --thickness 10 --length 150 --use grinding --hrc 60 --take ground`)
    .action(async (options: RoutesOptions) => { await (await import('#cli/commands/make-routes.ts')).makeRoutesCommand(options, out) })
  make.command('regrind').argument('<bars...>', 'codes; CODE=15 comes out 15 µm lower than the others').description('Keep the regrinding of bars of the rack as a job; "twinrest rack regrind" only works it out.')
    .option('--both-faces', 'left out: one face').addOption(new Option('--datum <face>', 'with one face: the face taken as true').choices(['A', 'B'])).option('--clean-up <µm>', 'off each face at its lowest place; left out: 10')
    .addOption(new Option('--use <use>', 'what they have to be good for afterwards').choices(uses).default('milling')).option('--name <name>', 'of the job; left out: the names of the bars').option('--person <initials>', 'who began it').option('--json', 'as data').addOption(dataOption())
    .action(async (bars: readonly string[], options: MakeRegrindOptions) => { await (await import('#cli/commands/make-regrind.ts')).makeRegrindCommand(bars, options, out) })
  make.command('jobs').description('All jobs and how far they are.').option('--json', 'as data').addOption(dataOption())
    .action(async (options: JsonOptions) => { await (await import('#cli/commands/make-jobs.ts')).makeJobsCommand(options, out) })
  make.command('job').argument('<job>', 'its id, the beginning of it, or its name').description('A job step by step: what to do, what to read, what was read, what is left.').option('--json', 'as data').addOption(dataOption())
    .action(async (job: string, options: JsonOptions) => { await (await import('#cli/commands/make-jobs.ts')).makeJobCommand(job, options, out) })
  make.command('cuts').argument('<job>', 'its id, the beginning of it, or its name').description('How the stock of a job is cut.').option('--json', 'as data').addOption(dataOption())
    .action(async (job: string, options: JsonOptions) => { await (await import('#cli/commands/make-cuts.ts')).makeCutsCommand(job, options, out) })
}
