// `npm run endure`: the long stories with full counts.
import { runAll, vitest } from './steps.mjs'

runAll([vitest('endure', { TWINREST_KILLS: '50', TWINREST_REQUESTS: '20000' })])
