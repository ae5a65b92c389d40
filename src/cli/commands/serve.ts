import type { ServeOptions } from '#cli/program.ts'
import { run } from '#server/run.ts'

/** The same as `npm start`, less the building. */
export async function serveCommand({ port, data, demo, lan, hostName = [], cert, key, behindProxy }: ServeOptions): Promise<void> {
  const texts = Object.entries({ port, data, cert, key }).flatMap(([name, value]) => (value === undefined ? [] : [`--${name}=${value}`]))
  const switches = [demo && '--demo', lan && '--lan', behindProxy && '--behind-proxy'].filter((one) => one !== undefined)
  await run([...texts, ...hostName.map((name) => `--host-name=${name}`), ...switches])
}
