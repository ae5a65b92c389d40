import { cutterData } from '#reference/cutting/cutter-data.ts'
import { specificForces } from '#reference/cutting/specific-forces.ts'
import { steelGroups } from '#reference/cutting/steel-groups.ts'

/** What the calculation `cutting` looks into. */
export const cuttingBooks = { forces: specificForces, cutters: cutterData, steels: steelGroups }
