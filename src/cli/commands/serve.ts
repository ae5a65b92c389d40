import type { DataOptions } from '#cli/options.ts'
import { run } from '#server/run.ts'

export type ServeOptions = DataOptions & {
  readonly port?: string; readonly demo?: true; readonly lan?: true; readonly hostName?: readonly string[]; readonly cert?: string; readonly key?: string; readonly behindProxy?: true
  readonly backups?: string; readonly backupHours?: string; readonly logRequests?: true
}

/** The same as `npm start`, less the building. */
export async function serveCommand({ port, data, demo, lan, hostName = [], cert, key, behindProxy, backups, backupHours, logRequests }: ServeOptions): Promise<void> {
  const texts = Object.entries({ port, data, cert, key, backups, 'backup-hours': backupHours }).flatMap(([name, value]) => (value === undefined ? [] : [`--${name}=${value}`]))
  const switches = [demo && '--demo', lan && '--lan', behindProxy && '--behind-proxy', logRequests && '--log-requests'].filter((one) => one !== undefined)
  await run([...texts, ...hostName.map((name) => `--host-name=${name}`), ...switches])
}
