import type { CertificateBar, Table } from '#drafting/inspect/certificate.ts'
import type { ProfileData } from '#drafting/inspect/profile.ts'
import type { Named } from '#drafting/pieces.ts'
import { bendProfile } from '#engine/inspect/bend-profile.ts'
import { barReadingsOf } from '#engine/inspect/check-readings.ts'
import type { CheckedBar } from '#engine/inspect/checked.ts'
import { stationValuesOf } from '#engine/inspect/shape.ts'
import type { Reading } from '#model/check.ts'
import { bothSystems, withUnit, wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { sayPass } from '#web/inspect/check/plate-data.ts'
import type { Certified } from '#web/inspect/print/certified.ts'
import { named, um, usesTable } from '#web/inspect/print/um-words.ts'
import { sayLook } from '#web/rack/say-check.ts'

/** What the certificate says about one bar. */
export function certificateBar(bar: CheckedBar, certified: Certified): CertificateBar {
  const { shop, units, nameOf, lengthMmOf } = certified, record = shop.bars.find(({ id }) => id === bar.id), lengthMm = lengthMmOf(bar.id)
  return {
    label: nameOf(bar.id),
    sizes: [bar.heightMm, record?.thicknessMm ?? null].map((mm) => (mm === null ? '?' : wordLength(mm, units))).concat(lengthMm === null ? '?' : withUnit(lengthMm, units)).join(' × '),
    figures: figuresOf(bar, units), uses: usesTable(bar.uses, units),
    profile: profileOf(bar, certified), turnOver: turnOverOf(bar, certified), readings: readingsTable(bar.id, certified),
  }
}

function figuresOf({ heightMm, shape, turnOver, provedToUm, uHeightUm, uUm, look }: CheckedBar, units: Units): readonly Named[] {
  const expandedUm = shape?.uncertainty?.height.expandedU ?? null, size = (value: number | null | undefined, mostDecimals?: number): string | null => (value === null || value === undefined ? null : um(value, units, mostDecimals))
  return [
    ...named('Height', heightMm === null ? null : bothSystems(heightMm, units)),
    ...(expandedUm === null ? named('its u', size(uHeightUm, 2)) : named('its U, 95 %', size(expandedUm, 2))),
    ...named('Parallelism', size(shape?.parallelismUm ?? turnOver?.parallelismUm)), ...named('its u', size(uUm, 2)), ...named('Proved to', size(provedToUm)),
    ...named('Taper', shape ? `${um(Math.abs(shape.taperUm), units)}${Math.abs(shape.taperUm) < 0.05 ? '' : `, ${shape.taperUm > 0 ? 'un' : ''}marked end higher`}` : null),
    ...(shape ? named(shape.crownUm !== null && shape.crownUm < 0 ? 'Hollow' : 'Crown', size(shape.crownUm === null ? null : Math.abs(shape.crownUm))) : []),
    ...named('Twist', size(shape?.twistUm)), ...named('Scatter of repeats', size(shape?.repeatabilityUm, 2)), ...named('Scatter alone shows', size(shape?.rangeBiasUm)),
    ...named('Look', look === null ? null : sayLook(look, units) || null),
  ]
}

function profileOf({ id, readings, shape, uses, turnOver }: CheckedBar, { nameOf, units, zeroName, lengthMmOf }: Certified): CertificateBar['profile'] {
  if (readings === null || turnOver !== null) return null
  const { stationsMm, lines } = stationValuesOf(readings), expandedUm = shape?.uncertainty?.parallelism.expandedU ?? null
  return {
    lengthMm: lengthMmOf(id) ?? stationsMm.at(-1)! + stationsMm[0]!, zero: zeroName,
    series: lines.map((line, at) => ({ label: lines.length === 1 ? nameOf(id) : `line ${at + 1}`, points: stationsMm.map((xMm, i) => ({ xMm, um: line[i]!, uUm: expandedUm })) })),
    whiskers: expandedUm === null ? '' : '± U of a difference', band: bandOf(uses, lines.flat(), units),
  }
}

/** The strictest limit that is proved, or else the widest, about the middle of the heights. */
function bandOf(uses: CheckedBar['uses'], heights: readonly number[], units: Units): ProfileData['band'] {
  const use = uses.findLast(({ verdict }) => verdict === 'proved') ?? uses[0]
  if (!use) return null
  const middle = (Math.max(...heights) + Math.min(...heights)) / 2
  return { fromUm: middle - use.limitUm / 2, toUm: middle + use.limitUm / 2, label: `${um(use.limitUm, units)}, ${use.use}` }
}

function turnOverOf({ id, turnOver }: CheckedBar, { check, units, zeroName, lengthMmOf }: Certified): CertificateBar['turnOver'] {
  const lengthMm = lengthMmOf(id)
  if (turnOver === null || lengthMm === null) return null
  const { stationsMm, heightsUm, parallelismUm, bowUm, asReadUm } = turnOver, means = (face: 'A' | 'B') => {
    const read = barReadingsOf(check, id, lengthMm, face), values = read && stationValuesOf(read)
    return stationsMm.map((x) => { const at = values?.stationsMm.indexOf(x) ?? -1; return values && at >= 0 ? values.lines.reduce((sum, line) => sum + line[at]!, 0) / values.lines.length : 0 })
  }
  const a = means('A'), b = means('B')
  return {
    lengthMm, stationsMm, zero: zeroName,
    faceA: { label: 'face A up', ums: a }, faceB: { label: 'face B up', ums: b },
    height: { label: 'height', ums: heightsUm ?? [] }, bend: { label: 'bend', ums: bendProfile(stationsMm, a, b) },
    asRead: { heading: 'As read', says: `Range ${um(asReadUm[0], units)} with face A up, ${um(asReadUm[1], units)} with face B up.` },
    apart: { heading: 'Height and bend apart', says: `${parallelismUm === null ? 'The height cannot be told: the bar rocks on both faces.' : `Heights within ${um(parallelismUm, units)}.`} Bent ${um(Math.abs(bowUm), units)} toward face ${bowUm < 0 ? 'B' : 'A'}.` },
  }
}

/** Texts as typed, a row for each pass along the bar. */
function readingsTable(bar: string, { check, units }: Certified): Table {
  const own = check.readings.filter((reading) => reading.bar === bar), stations = [...new Set(own.map(({ station }) => station))].sort((a, b) => a - b)
  const passes = new Map<string, Map<number, string>>(), seen = new Map<string, number>()
  const lines = own.some(({ line }) => line === 1) ? 2 as const : 1 as const, repeats = Math.max(1, ...own.map((reading) => own.filter((other) => samePlace(other, reading)).length))
  for (const reading of own) {
    const { line, face, station, text } = reading, place = `${line}/${face}/${station}`, repeat = seen.get(place) ?? 0
    seen.set(place, repeat + 1)
    const label = sayPass({ face, line, repeat }, { method: check.method, lines, repeats }) || 'reading', row = passes.get(label) ?? new Map<number, string>()
    passes.set(label, row.set(station, text))
  }
  const xOf = (station: number): string => { const xMm = own.find((reading) => reading.station === station)?.xMm ?? null; return xMm === null ? '' : ` (${wordLength(xMm, units)})` }
  return { heads: ['as typed', ...stations.map((station) => `${station + 1}${xOf(station)}`)], rows: [...passes].map(([label, row]) => [label, ...stations.map((station) => row.get(station) ?? '')]) }
}

const samePlace = (a: Reading, b: Reading): boolean => a.line === b.line && a.face === b.face && a.station === b.station
