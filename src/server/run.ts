import { Refusal } from '#model/refusal.ts'
import { type Config, readConfig } from '#server/config.ts'
import { placeFrom, shopsUnder } from '#server/place.ts'
import { serveShop, serveShops } from '#server/serve-shop.ts'
import { openStore } from '#store/open.ts'
import { recordOf, recordsOf } from '#store/records.ts'
import { loadDemo } from '#tasks/shop/load-demo.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { plainUnits } from '#words/terms.ts'

/** Serves the shop until told to stop; what cannot be done is said in a sentence, exit code 2. */
export async function run(args: readonly string[]): Promise<void> {
  try {
    await serve(args)
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    process.stderr.write(`${sayRefusal(error, plainUnits)}\n`)
    process.exitCode = 2
  }
}

async function serve(args: readonly string[]): Promise<void> {
  const config = readConfig(args, process.env)
  const place = placeFrom(config.dataFolder, process.env), under = shopsUnder(place, config.open, process.env)
  if (under !== null) return await serveAll(place.database, under, config)
  const store = await openStore(place.database, place.shop)
  try {
    if (config.demo && !(await recordOf(store, 'shop', 'shop')).demo) await loadDemo(store)
    const { url, addresses, stop } = await serveShop(store, config)
    const told = toldToStop()
    const isEmpty = (await recordsOf(store, 'vise')).length === 0 && (await recordsOf(store, 'bar')).length === 0
    process.stdout.write(`Twinrest: ${url}\n${sayOpen(addresses)}${isEmpty ? emptyShop : ''}`)
    await told
    await stop()
  } finally {
    await store.close()
  }
}

async function serveAll(database: string, under: string, config: Config): Promise<void> {
  const { openInstallation } = await import('#store/postgres/installation.ts')
  const installation = await openInstallation(database)
  try {
    const { url, stop } = await serveShops(installation, under, config), told = toldToStop()
    process.stdout.write(`Twinrest: ${url}, each shop under its own name: SHOP.${under}\n`)
    await told
    await stop()
  } finally {
    await installation.close()
  }
}

const emptyShop = 'This shop is empty: open the address and add a vise and your bars, or look around in the invented demo shop it offers.\n'

function sayOpen(addresses: readonly string[]): string {
  if (addresses.length === 0) return ''
  const reduced = addresses[0]!.startsWith('http:') ? 'Plain http: devices cannot work without the network, keep the app or read gauges by cable. "twinrest certificate" changes that.\n' : ''
  return `Open to the network: ${addresses.join('  ')}\n${reduced}`
}

function toldToStop(): Promise<void> {
  return new Promise((done) => {
    for (const signal of ['SIGTERM', 'SIGINT'] as const) process.once(signal, () => done())
  })
}
