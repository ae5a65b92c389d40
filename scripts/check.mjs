// `npm run check`: what has to be right before a commit, under a minute.
import { deadCode, lint, pureTypes, roomsKept, runAll, types, vitest } from './steps.mjs'

runAll([types(), pureTypes(), roomsKept(), lint(), deadCode(), vitest('unit')])
