import type { Making } from '#model/making.ts'
import { Refusal } from '#model/refusal.ts'

type Named = readonly (readonly [field: string, given: number])[]

/** @throws Refusal `size-not-positive`, `wish-negative`, `id-used-twice`, `steel-not-listed`, `range-upside-down`, `too-few-stages`, `too-many` */
export function refuseMaking(making: Making): void {
  for (const [field, given] of sizesOf(making)) if (given < 1e-6) throw new Refusal('size-not-positive', { field, given, needed: { above: 0 } })
  for (const [field, given] of wishesOf(making)) if (given < 0) throw new Refusal('wish-negative', { field, given, needed: 0 })
  if (making.infeeds.stages.length === 0) throw new Refusal('too-few-stages', { field: 'infeeds.stages', given: 0, needed: 1 })
  if (making.infeeds.sparkOut > 1000) throw new Refusal('too-many', { field: 'infeeds.sparkOut', given: making.infeeds.sparkOut, needed: 1000 })
  refuseTwice([...making.lengths.map(({ id }, k) => [`lengths[${k}].id`, id] as const), ...making.plates.map(({ id }, k) => [`plates[${k}].id`, id] as const)])
  refuseTwice(making.machines.map(({ id }, k) => [`machines[${k}].id`, id] as const))
  refuseTwice(making.steels.map(({ name }, k) => [`steels[${k}].name`, name] as const))
  const names = making.steels.map(({ name }) => name)
  for (const list of ['lengths', 'plates'] as const) {
    making[list].forEach(({ steel }, k) => { if (!names.includes(steel)) throw new Refusal('steel-not-listed', { field: `${list}[${k}].steel`, given: steel, needed: names }) })
  }
  refuseRanges(making)
  making.steels.forEach(({ hardening }, k) => {
    if (hardening !== null && hardening.growthFromPercent > hardening.growthToPercent) throw new Refusal('range-upside-down', { field: `steels[${k}].hardening.growthToPercent`, given: hardening.growthToPercent, needed: { least: hardening.growthFromPercent } })
  })
}

/** Everything that has to be above 0, as far as it is given. */
function sizesOf({ lengths, plates, machines, infeeds, limitsUm, hoursPerDay }: Making): Named {
  const { drilling, milling, 'fine milling': fineMilling, grinding } = limitsUm
  return [
    ...eachOf('lengths', lengths, ['lengthMm', 'widthMm', 'thicknessMm']), ...eachOf('plates', plates, ['lengthMm', 'widthMm', 'thicknessMm']),
    ...eachOf('machines', machines, ['longestMm', 'kerfMm']), ...eachOf('infeeds.stages', infeeds.stages, ['infeedUm']),
    ...of('limitsUm', { drilling, milling, fineMilling, grinding }, ['drilling', 'milling', 'fineMilling', 'grinding']), ['hoursPerDay', hoursPerDay],
  ]
}

/** Everything that must not be below 0, as far as it is given. */
function wishesOf({ lengths, plates, machines, handPerHour, cutterCost, daysLeft, hardening, bought, leave, infeeds, times, experience }: Making): Named {
  return [
    ...eachOf('lengths', lengths, ['price']), ...eachOf('plates', plates, ['price']), ...eachOf('machines', machines, ['perHour', 'sawnFaceMm']),
    ...of('', { handPerHour, cutterCost, daysLeft }, ['handPerHour', 'cutterCost', 'daysLeft']),
    ...(hardening === null ? [] : of('hardening', hardening, ['cost', 'days'])), ...(bought === null ? [] : of('bought', bought, ['cost', 'days', 'matchUm', 'parallelUm'])),
    ...of('leave', leave, ['edgeMm', 'endMm', 'cutEndMm', 'faceMm', 'rubMm', 'bowMm', 'cleanUpMm', 'skinMm']), ...eachOf('infeeds.stages', infeeds.stages, ['takesUm']),
    ...eachOf('times', times, ['orderMin', 'heightMin', 'barMin', 'unattendedMin']),
    ...experience.flatMap(({ matchUm, parallelUm, hours }, k) => [
      ...listed(`experience[${k}].matchUm`, matchUm), ...listed(`experience[${k}].parallelUm`, parallelUm), ...(hours === null ? [] : of(`experience[${k}].hours`, hours, ['planned', 'taken'])),
    ]),
  ]
}

const of = <Key extends string>(path: string, one: { readonly [key in Key]: number | null }, keys: readonly Key[]): Named =>
  keys.flatMap((key) => (one[key] === null ? [] : [[path === '' ? key : `${path}.${key}`, one[key]] as const]))

const eachOf = <Key extends string>(list: string, all: readonly { readonly [key in Key]: number | null }[], keys: readonly Key[]): Named => all.flatMap((one, k) => of(`${list}[${k}]`, one, keys))

const listed = (list: string, all: readonly number[]): Named => all.map((given, k) => [`${list}[${k}]`, given])

/** A single number leaves its partner open. */
function refuseRanges({ allowances }: Making): void {
  allowances.forEach((row, k) => {
    for (const key of ['thinFaceMm', 'thickFaceMm', 'edgeMm'] as const) {
      const [least, most] = row[key]
      if (!(least >= 0 && least <= most)) throw new Refusal('range-upside-down', { field: `allowances[${k}].${key}`, given: Number.isFinite(most) ? most : null, needed: { leastMm: Number.isFinite(least) ? Math.max(0, least) : 0 } })
    }
  })
}

function refuseTwice(ids: readonly (readonly [string, string])[]): void {
  const seen = new Set<string>()
  for (const [field, given] of ids) {
    if (seen.has(given)) throw new Refusal('id-used-twice', { field, given })
    seen.add(given)
  }
}
