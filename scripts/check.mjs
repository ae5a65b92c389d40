// `npm run check`: what has to be right before a commit, under a minute.
import { deadCode, kernelCurrent, lint, pureTypes, roomsKept, runAll, types, usedByTestsAlone, vitest } from './steps.mjs'

runAll([types(), pureTypes(), roomsKept(), kernelCurrent(), lint(), deadCode(), usedByTestsAlone(), vitest('unit')])
