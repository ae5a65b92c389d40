// `npm test`: everything, the long stories with small counts.
import { browserStories, deadCode, kernelCurrent, lint, pureTypes, roomsKept, runAll, types, usedByTestsAlone, vitest } from './steps.mjs'

runAll([
  types(), pureTypes(), roomsKept(), kernelCurrent(), lint(), deadCode(), usedByTestsAlone(),
  vitest('unit'), vitest('postgres'), vitest('doors'), vitest('endure', { TWINREST_KILLS: '10' }), browserStories(),
  // All but the stories of looks, which no database changes, and of SQLite's backups (playwright.config.ts).
  browserStories({ TWINREST_STORIES_ON: 'postgres' }, ['--grep-invert', '@looks'], 'browser on postgres'),
])
