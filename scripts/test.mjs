// `npm test`: everything, the long stories with small counts.
import { browserStories, deadCode, lint, pureTypes, roomsKept, runAll, types, vitest } from './steps.mjs'

runAll([
  types(), pureTypes(), roomsKept(), lint(), deadCode(),
  vitest('unit'), vitest('postgres'), vitest('doors'), vitest('endure', { TWINREST_KILLS: '10' }), browserStories(),
  browserStories({ TWINREST_STORIES_ON: 'postgres' }, ['shop.spec', 'live.spec'], 'browser on postgres'),
])
