// `npm run endure`: the long stories with full counts.
import { runAll, vitest } from './steps.mjs'

runAll([vitest('endure', {
  TWINREST_KILLS: '200', TWINREST_REQUESTS: '20000', TWINREST_ENTRIES: '5000', TWINREST_DEVICES: '100', TWINREST_LOAD_SECONDS: '120', TWINREST_READ_MS: '100',
})])
