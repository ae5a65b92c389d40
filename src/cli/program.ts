import { Command, Option } from 'commander'
import { sides } from '#model/part.ts'
import type { BackupOptions } from '#cli/commands/backup.ts'
import type { CardOptions } from '#cli/commands/card.ts'
import type { CertificateOptions } from '#cli/commands/certificate.ts'
import type { ServeOptions } from '#cli/commands/serve.ts'
import type { SetupOptions } from '#cli/commands/setup.ts'
import { addDatabase } from '#cli/database-commands.ts'
import { addInspect } from '#cli/inspect-commands.ts'
import { addMake } from '#cli/make-commands.ts'
import { backupsOption, dataOption, type DataOptions, type JsonOptions, paperOption, several, viseOption } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { addRack } from '#cli/rack-commands.ts'

/**
 * The command and its words. Each action loads its own code when it is asked for, so that a calculation starts without
 * a database and help without anything.
 */
export function programFor(out: Out): Command {
  const program = new Command('twinrest')
    .description('Which bars of the rack carry this part in this vise, and why.')
    .configureOutput({ writeOut: out.answer, writeErr: out.say })
    .exitOverride()
    .showSuggestionAfterError()
    .showHelpAfterError('"twinrest --help" lists the commands, "twinrest COMMAND --help" what each takes.')
    .addHelpText('after', `
Examples:
  twinrest setup examples/plain-block.json --vise "Bench mill"
  twinrest inspect show
  twinrest rack list --height 35
  twinrest rack import rack.csv --dry-run
  twinrest make routes --heights 30 --thickness 10 --length 150
  twinrest calc window < examples/window.json
  twinrest serve --port 4173
  twinrest device code

Exit codes: 0 done, 1 a fault in Twinrest, 2 refused (the sentence on standard error says what to put right).
The shop is kept in the folder --data, or TWINREST_DATA, or data in the checkout; a running server does not mind.`)
  addSetup(program, out)
  addInspect(program, out)
  addRack(program, out)
  addMake(program, out)
  addCard(program, out)
  addCalc(program, out)
  addServe(program)
  addBackup(program, out)
  addDatabase(program, out)
  addAccess(program, out)
  return program
}

function addSetup(program: Command, out: Out): void {
  program.command('setup').argument('<part>', 'file with the part and its cuts as JSON; - for standard input')
    .description('Choose bars for a part: what to use, what is gripped and clear, why, and what is nearest when nothing serves.')
    .addOption(viseOption()).addOption(dataOption())
    .option('--json', 'the whole answer as data')
    .option('--svg <file>', 'also draw section and plan into a file')
    .addOption(new Option('--foretell <side>', 'also what the first choice will come out as, with this side of the part at the fixed jaw').choices([...sides]))
    .addHelpText('after', `
The file holds part, and as needed cuts, wishes, ways, vise, in the keys of "calc setup":
  { "part": { "betweenJawsMm": 38, "alongJawsMm": "60 mm", "heightMm": "7/8 in" }, "cuts": [{ "kind": "face", "depthMm": 6 }] }
A length is a number in millimetres, or a text with its unit. An unknown key is refused.

Examples:
  twinrest setup examples/plate-with-two-holes.json --vise "Bench mill" --svg holes.svg
  twinrest setup examples/inch-block.json --json`)
    .action(async (file: string, options: SetupOptions) => { await (await import('#cli/commands/setup.ts')).setupCommand(file, options, out) })
}

function addCard(program: Command, out: Out): void {
  program.command('card').description('The vise card: every pair with the finished height it works from, its grip and the largest drill clear of the bed.')
    .addOption(viseOption()).addOption(paperOption()).addOption(dataOption())
    .option('--svg <file>', 'draw it into a file to print')
    .action(async (options: CardOptions) => { await (await import('#cli/commands/card.ts')).cardCommand(options, out) })
}

function addCalc(program: Command, out: Out): void {
  program.command('calc').argument('[name]', 'left out: lists the calculations there are').description('A calculation as data: a case, or an array of cases, as JSON from standard input to standard output.')
    .addHelpText('after', `
A refused case in an array answers {"refused": …, "facts": …} in its place; alone it ends with exit code 2 and the same on standard error.

Example:
  twinrest calc window < examples/window.json`)
    .action(async (name: string | undefined) => { await (await import('#cli/commands/calc.ts')).calcCommand(name, out) })
}

function addServe(program: Command): void {
  program.command('serve').description('Serve the shop on this machine until stopped; with --lan to its network.')
    .option('--port <port>', 'left out: TWINREST_PORT, or 4173; 0 for any free one').addOption(dataOption()).option('--demo', 'fill an empty shop with invented demo data')
    .option('--lan', 'open the shop to the network: enrolled devices alone are let in (or TWINREST_LAN=1)')
    .option('--host-name <name>', 'a name or address the machine is reached by, besides those it knows; may be given again', several)
    .option('--cert <file>', 'certificate for https, PEM; left out: the shop\'s own where "twinrest certificate" made one').option('--key <file>', 'its key, PEM')
    .addOption(backupsOption()).option('--backup-hours <hours>', 'a backup is made when the last is older; left out: 24, 0: never').option('--log-requests', 'a line in the log for every request')
    .option('--behind-proxy', 'a proxy on this machine lets the network in, by https; its forwarded headers are taken at their word')
    .addHelpText('after', '\nExamples:\n  twinrest owner passphrase\n  twinrest certificate\n  twinrest serve --lan')
    .action(async (options: ServeOptions) => { await (await import('#cli/commands/serve.ts')).serveCommand(options) })
}

function addBackup(program: Command, out: Out): void {
  program.command('backup').description('Make a copy of the whole shop as it stands, also while a server has it open, and look it through.')
    .option('--list', 'instead: the backups there are, the newest first').addOption(backupsOption()).addOption(dataOption())
    .action(async (options: BackupOptions) => { await (await import('#cli/commands/backup.ts')).backupCommand(options, out) })
  program.command('restore').argument('<file>', 'a backup, by its path or its name in the folder of the backups')
    .description('Put a backup in the place of the shop. The shop before is kept beside it. Stop the server first.').addOption(backupsOption()).addOption(dataOption())
    .action(async (file: string, options: BackupOptions) => { await (await import('#cli/commands/backup.ts')).restoreCommand(file, options, out) })
  program.command('export').argument('[file]', 'left out: standard output').description('Write the whole shop as JSON: everything that ever happened in it, less devices and passphrase.').addOption(dataOption())
    .action(async (file: string | undefined, options: DataOptions) => { await (await import('#cli/commands/shop-file.ts')).exportCommand(file, options, out) })
  program.command('import').argument('<file>', 'a shop as JSON; - for standard input').description('Read a whole shop into an empty data folder: all of it, or nothing.').addOption(dataOption())
    .action(async (file: string, options: DataOptions) => { await (await import('#cli/commands/shop-file.ts')).importCommand(file, options, out) })
}

function addAccess(program: Command, out: Out): void {
  program.command('owner').description('The owner of the shop.')
    .command('passphrase').description('Set the passphrase of the owner, asked for twice; from a pipe, its first line.').addOption(dataOption())
    .action(async (options: DataOptions) => { await (await import('#cli/commands/owner.ts')).ownerPassphraseCommand(options, out) })
  const device = program.command('device').description('Devices of the network: let in, list, revoke.')
  device.command('code').description('A code that lets one device in, once, within ten minutes.').addOption(dataOption())
    .action(async (options: DataOptions) => { await (await import('#cli/commands/device.ts')).deviceCodeCommand(options, out) })
  device.command('list').description('All devices ever let in.').option('--json', 'as data').addOption(dataOption())
    .action(async (options: JsonOptions) => { await (await import('#cli/commands/device.ts')).deviceListCommand(options, out) })
  device.command('revoke').argument('<device>', 'its name or id').description('Refuse a device from its next request on.').addOption(dataOption())
    .action(async (name: string, options: DataOptions) => { await (await import('#cli/commands/device.ts')).deviceRevokeCommand(name, options, out) })
  program.command('certificate').description('A certificate for https by an authority of the shop\'s own: made the first time, later made anew when it is due.')
    .option('--host-name <name>', 'a further name or address the machine is reached by; may be given again', several)
    .option('--new-authority', 'make the authority anew too: every device has to be made to trust it again').option('--json', 'as data').addOption(dataOption())
    .action(async (options: CertificateOptions) => { await (await import('#cli/commands/certificate.ts')).certificateCommand(options, out) })
}

