import type { CertificateData } from '#drafting/inspect/certificate.ts'
import type { Block } from '#drafting/paragraph.ts'
import type { Named } from '#drafting/pieces.ts'
import { stationValuesOf } from '#engine/inspect/shape.ts'
import { commonGuardFactor } from '#engine/inspect/verdict.ts'
import type { CheckTool } from '#model/check.ts'
import { withUnit, wordNumber } from '#model/length.ts'
import { sayFinding } from '#words/say-finding.ts'
import { termsFor } from '#words/terms.ts'
import { capital } from '#words/wording.ts'
import { certificateBar } from '#web/inspect/print/certificate-bar.ts'
import { uncertaintyOf } from '#web/inspect/print/certificate-uncertainty.ts'
import type { Certified } from '#web/inspect/print/certified.ts'
import { methodWords } from '#web/inspect/print/method-words.ts'
import { named, um, usesTable } from '#web/inspect/print/um-words.ts'

/** Everything the certificate of a kept check says, worded. */
export function certificateFrom(certified: Certified): CertificateData {
  const { check, checked, shop, units, nameOf, dayOf, today } = certified, day = dayOf(check.atIso), bars = checked.bars
  return {
    title: 'Certificate of a check', heading: bars.length === 1 ? `Check of ${nameOf(bars[0]!.id)}` : `Check of ${bars.length} bars`,
    description: `What was read of ${bars.map(({ id }) => nameOf(id)).join(', ')} on ${day} and what it proves.`,
    under: `${capital(methodWords[check.method])}, ${day}${check.person === '' ? '' : `, ${check.person}`}${check.asFound ? ' · as found' : ''}`,
    code: { label: 'check', value: check.id.slice(0, 8) }, units,
    foot: [[
      { label: 'Shop', value: shop.shop.name, share: 0.4 }, { label: 'Checked on', value: day, share: 0.24 }, { label: 'Printed on', value: today, share: 0.22 }, { label: 'Initials', value: check.person, share: 0.14 },
    ]],
    taken: takenFrom(certified), corrections: correctionsOf(certified),
    bars: bars.map((bar) => certificateBar(bar, certified)),
    pair: pairOf(certified), uncertainty: uncertaintyOf(certified),
    rule: { heading: 'Rule', lines: [
      `Proved: the value and ${wordNumber(commonGuardFactor, units.decimalMark)} standard uncertainties lie within the limit. Out: the value less as much lies beyond it. Not proved: neither. (ISO 14253-1)`,
      'The limits are the shop’s own. This sheet says what these readings prove; it is not the certificate of a calibration laboratory.',
    ] },
    findings: { heading: 'Findings', lines: checked.findings.length === 0 ? ['Nothing that would have to be looked at again.'] : [...new Set(checked.findings.map((finding) => sayFinding(finding, units, nameOf)))] },
    notComputed: { heading: 'Not computed', lines: [`Straightness and squareness of the sides, hardness, what a bar gives under load${check.method === 'turn-over' || check.method === 'rock' ? '' : '; bend: readings from one face mix bend and height'}.`] },
    sign: ['Checked by', 'Signature', 'Date'],
  }
}

function takenFrom({ check, units, nameOf, zeroName, dayOf }: Certified): readonly Named[] {
  const { took, zero, closing, temperature, note } = check, day = check.atIso.slice(0, 10)
  const tool = (one: CheckTool | null | undefined): string | null =>
    (one ? `${one.name}${one.dueOn === null ? ', no due date kept' : one.dueOn < day ? `, overdue since ${dayOf(one.dueOn)}` : `, due ${dayOf(one.dueOn)}`}` : null)
  return [
    ...named('Instrument', tool(took?.instrument) ?? 'none named'), ...named('Plate', tool(took?.plate)), ...named(`${capital(termsFor(units.words).gauge)} blocks`, tool(took?.blocks)),
    ...named('Zero', zero === null ? null : zero.on === 'bar' ? `${nameOf(zero.bar)}, station ${zero.station + 1}, taken as ${withUnit(zero.heightMm, units)}` : zeroName.replace(/^zero: /, '')),
    ...named('Zero at the end', closing === null ? null : `${closing.text} (${um(closing.um, units)})`),
    ...named('Temperature', temperature === null ? null : `${wordNumber(temperature.c, units.decimalMark)} °C`),
    ...named('Note', note.trim() || null),
  ]
}

function correctionsOf({ check, shop, dayOf }: Certified): Block | null {
  const said = (id: string): string => { const other = shop.checks.find((one) => one.id === id); return `check ${id.slice(0, 8)}${other ? ` of ${dayOf(other.atIso)}` : ''}` }
  const later = shop.checks.find(({ replaces }) => replaces === check.id)
  const lines = [...(check.replaces === null ? [] : [`Replaces ${said(check.replaces)}.`]), ...(later ? [`Replaced by ${said(later.id)}: this one no longer counts.`] : [])]
  return lines.length === 0 ? null : { heading: 'Corrections', lines }
}

function pairOf({ checked: { pair, pairUses, bars, spreadUm }, units, nameOf, zeroName, lengthMmOf }: Certified): CertificateData['pair'] {
  const [first, second] = bars
  if (!first || !second || (pair === null && spreadUm === null)) return null
  if (pair === null) return { heading: 'All bars together', figures: named('Highest less lowest', spreadUm === null ? null : um(spreadUm, units)), uses: null, match: null }
  const read = [first, second].flatMap(({ readings }) => readings ?? []), points = read.map((readings) => {
    const { stationsMm, lines } = stationValuesOf(readings)
    return stationsMm.map((xMm, i) => ({ xMm, um: lines.length === 1 ? lines[0]![i]! : null, uUm: null }))
  })
  const drawable = pair.worstAsLaidUm !== null && pair.worstTurnedUm !== null && points.flat().every((point) => point.um !== null)
  const size = (value: number | null): string | null => (value === null ? null : um(value, units))
  return {
    heading: `${nameOf(first.id)} and ${nameOf(second.id)} as mates`, uses: usesTable(pairUses, units),
    figures: [
      ...named('Mean difference', um(Math.abs(pair.meanDifferenceUm), units)), ...named('Worst as laid', size(pair.worstAsLaidUm)), ...named('Worst turned', size(pair.worstTurnedUm)),
      ...named('Better way', pair.betterWay), ...named('All within', um(pair.allWithinUm, units)), ...named('Proved to', size(pair.provedToUm ?? null)),
    ],
    match: !drawable ? null : {
      lengthMm: Math.max(lengthMmOf(first.id) ?? 0, lengthMmOf(second.id) ?? 0, points[0]!.at(-1)!.xMm), zero: zeroName, whiskers: '',
      first: { label: nameOf(first.id), points: points[0]! }, second: { label: nameOf(second.id), points: points[1]! },
      asLaid: { heading: 'As laid', says: `Worst difference ${size(pair.worstAsLaidUm)}.` }, turned: { heading: `${nameOf(second.id)} turned`, says: `Worst difference ${size(pair.worstTurnedUm)}.` },
    },
  }
}
