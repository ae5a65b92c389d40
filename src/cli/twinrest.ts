#!/usr/bin/env node
import { programFor } from '#cli/program.ts'
import { runToItsEnd } from '#cli/run-to-its-end.ts'

await runToItsEnd((out) => programFor(out).parseAsync(process.argv))
