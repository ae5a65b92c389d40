import { Argument, type Command } from 'commander'
import { dataOption, type DataOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'

/** For an installation on PostgreSQL: shops come in, go out and are begun. */
export function addDatabase(program: Command, out: Out): void {
  program.command('move').addArgument(new Argument('<where>', 'where to').choices(['database', 'folder']))
    .description('Carry the whole shop, devices and passphrase too, from the data folder into the PostgreSQL database of TWINREST_DATABASE_URL, or back. The target has to be empty.').addOption(dataOption())
    .addHelpText('after', `
All of it or nothing; the shop it came from stays as it is. Both are read through at the end and have to be the same.
Stop the servers first. TWINREST_SHOP names the shop in the database; left out: shop.

Examples:
  TWINREST_DATABASE_URL=postgres://twinrest@db.example/shops twinrest move database
  TWINREST_DATABASE_URL=postgres://twinrest@db.example/shops twinrest move folder --data ./back`)
    .action(async (where: 'database' | 'folder', options: DataOptions) => { await (await import('#cli/commands/move.ts')).moveCommand(where, options, out) })
  program.command('shop').description('The shops of a PostgreSQL database.')
    .command('add').argument('<name>', 'small letters, digits and hyphens: it stands in the name of its host').description('Begin a shop in the database of TWINREST_DATABASE_URL.')
    .action(async (name: string) => { await (await import('#cli/commands/shop-add.ts')).shopAddCommand(name, out) })
}
