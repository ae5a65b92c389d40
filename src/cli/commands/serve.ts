import type { ServeOptions } from '#cli/program.ts'
import { run } from '#server/run.ts'

/** The same as `npm start`, less the building. */
export async function serveCommand({ port, data, demo }: ServeOptions): Promise<void> {
  await run([...(port === undefined ? [] : [`--port=${port}`]), ...(data === undefined ? [] : [`--data=${data}`]), ...(demo ? ['--demo'] : [])])
}
