import { hardnessRows } from '#reference/steels/hardness.ts'
import { heatTables } from '#reference/steels/heat-tables.ts'

/** What the calculation `heat` looks into. */
export const heatBooks = { tables: heatTables, hardness: hardnessRows }
