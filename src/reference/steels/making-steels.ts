import type { Hardening, MakingSteel } from '#model/making-steel.ts'
import { heatTables } from '#reference/steels/heat-tables.ts'
import { steels } from '#reference/steels/steels.ts'

/** °C. Rows of a tempering table in here are working tempers of a bar. Common practice, no source. */
const workingC = { from: 150, to: 220 }

/** What routes and blanks have to know of each steel, out of its data sheets. @source SHOP-PRACTICE */
export const makingSteels: readonly MakingSteel[] = steels.map(({ name, carbonPercent, deliveredHrc, source, standing }) => ({ name, carbonPercent, deliveredHrc, hardening: hardeningOf(name), source, standing }))

/** Null as well where its growth is not known. */
function hardeningOf(name: string): Hardening | null {
  const table = heatTables.find(({ steel }) => steel === name)
  if (table === undefined || table.growthPercent === null) return null
  const working = table.tempering.filter(({ atC }) => atC >= workingC.from && atC <= workingC.to)
  return {
    quench: table.quench.medium, hrcFrom: Math.min(...working.map(({ fromHrc }) => fromHrc)), hrcTo: Math.max(...working.map(({ toHrc }) => toHrc)),
    growthFromPercent: table.growthPercent.from, growthToPercent: table.growthPercent.to,
  }
}
