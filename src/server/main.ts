import { run } from '#server/run.ts'

await run(process.argv.slice(2))
