import type { ServeOptions } from '#cli/program.ts'
import { run } from '#server/run.ts'

/** The same as `npm start`, less the building. */
export async function serveCommand({ port, data, demo, lan, hostName = [], cert, key, behindProxy, backups, backupHours, logRequests }: ServeOptions): Promise<void> {
  const texts = Object.entries({ port, data, cert, key, backups, 'backup-hours': backupHours }).flatMap(([name, value]) => (value === undefined ? [] : [`--${name}=${value}`]))
  const switches = [demo && '--demo', lan && '--lan', behindProxy && '--behind-proxy', logRequests && '--log-requests'].filter((one) => one !== undefined)
  await run([...texts, ...hostName.map((name) => `--host-name=${name}`), ...switches])
}
