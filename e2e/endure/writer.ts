import { keepDeed } from '#store/deeds.ts'
import { openStore } from '#store/open.ts'
import { deedOfBar } from './deed-of-bar.ts'

// A process of its own that adds bars to a data folder, one deed after the other, and says each id once it is kept.
const [folder = '', name = '', count = '0'] = process.argv.slice(2)
const store = await openStore(folder)
for (let at = 0; at < Number(count); at += 1) {
  const { deed, bar } = deedOfBar(`${name}-${at}`)
  await keepDeed(store, deed)
  process.stdout.write(`${bar}\n`)
}
await store.close()
