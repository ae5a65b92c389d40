import { monitorEventLoopDelay } from 'node:perf_hooks'
import type { MiddlewareHandler } from 'hono'
import type { Log } from '#server/log.ts'
import { routeOf } from '#server/route-of.ts'

/** A number as it is now, with what it says. */
export type Gauge = { readonly name: string; readonly help: string; readonly value: number }

export type Metrics = {
  /** Counts and times every request; `log` is told of each where one is given. */
  readonly measure: (log: Log | null) => MiddlewareHandler
  /** @source METRICS-TEXT */
  readonly text: (gauges: readonly Gauge[]) => string
}

const bucketsS = [0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5]

export function metricsOf(): Metrics {
  const requests = new Map<string, number>(), delay = monitorEventLoopDelay({ resolution: 20 })
  const times = { read: bucketsS.map(() => 0), write: bucketsS.map(() => 0) }, counts = { read: 0, write: 0 }, sums = { read: 0, write: 0 }
  delay.enable()
  return {
    measure: (log) => async (c, next) => {
      const began = performance.now()
      await next()
      const seconds = (performance.now() - began) / 1000, route = routeOf(c), method = methodOf(c.req.method), kind = method === 'GET' || method === 'HEAD' ? 'read' : 'write'
      const labels = `method="${method}",route="${route}",status="${c.res.status}"`
      requests.set(labels, (requests.get(labels) ?? 0) + 1)
      bucketsS.forEach((most, at) => { if (seconds <= most) times[kind][at]! += 1 })
      counts[kind] += 1
      sums[kind] += seconds
      log?.({ level: 'info', what: 'request', method, route, status: c.res.status, ms: Math.round(seconds * 1e4) / 10 })
    },
    text(gauges) {
      const lines = ['# HELP twinrest_requests_total Requests answered.', '# TYPE twinrest_requests_total counter', ...[...requests].map(([labels, count]) => `twinrest_requests_total{${labels}} ${count}`)]
      lines.push('# HELP twinrest_request_seconds How long answers took.', '# TYPE twinrest_request_seconds histogram')
      for (const kind of ['read', 'write'] as const) {
        lines.push(...bucketsS.map((most, at) => `twinrest_request_seconds_bucket{kind="${kind}",le="${most}"} ${times[kind][at]}`), `twinrest_request_seconds_bucket{kind="${kind}",le="+Inf"} ${counts[kind]}`)
        lines.push(`twinrest_request_seconds_sum{kind="${kind}"} ${sums[kind]}`, `twinrest_request_seconds_count{kind="${kind}"} ${counts[kind]}`)
      }
      for (const { name, help, value } of [...gauges, ...ownGauges(delay.percentile(99))]) lines.push(`# HELP ${name} ${help}`, `# TYPE ${name} gauge`, `${name} ${value}`)
      return `${lines.join('\n')}\n`
    },
  }
}

function ownGauges(delayNs: number): Gauge[] {
  return [
    { name: 'process_resident_memory_bytes', help: 'Memory of the server.', value: process.memoryUsage.rss() },
    { name: 'process_start_time_seconds', help: 'When the server was started.', value: Math.round(Date.now() / 1000 - process.uptime()) },
    { name: 'twinrest_event_loop_delay_seconds', help: 'How late the server was for its next piece of work, 99th percentile since its start.', value: Math.round(delayNs) / 1e9 },
  ]
}

const methods: readonly string[] = ['GET', 'HEAD', 'POST', 'PUT', 'DELETE', 'PATCH', 'OPTIONS']
const methodOf = (method: string): string => (methods.includes(method) ? method : 'other')
