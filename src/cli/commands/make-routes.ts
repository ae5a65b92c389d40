import type { OrderForm } from '#model/job-record.ts'
import { type LengthUnit, wordLength } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { Route, RouteKind } from '#model/route.ts'
import type { Units } from '#model/shop-record.ts'
import type { Use } from '#model/wishes.ts'
import { inColumns } from '#cli/columns.ts'
import type { JsonOptions, UnitOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { device, withShop } from '#cli/with-shop.ts'
import { wrapped } from '#cli/wrapped.ts'
import { makerFor } from '#tasks/maker.ts'
import { beginJob, routesOfShop, type RoutesOfShop } from '#tasks/make/routes-of-shop.ts'
import { sayFinding } from '#words/say-finding.ts'
import { routeStatusWords, routeWords, sayBand, sayCost, sayExpectedFrom, sayHeights, sayHours, sayMoney } from '#words/say-make.ts'

export type RoutesOptions = JsonOptions & UnitOptions & {
  readonly heights?: string; readonly ladder?: string; readonly step?: string; readonly belowJaw?: string; readonly thickness: string; readonly length?: string; readonly jawWidth?: string
  readonly pairs: string; readonly vises: string; readonly use: Use; readonly hrc?: string; readonly due?: string; readonly faces?: true; readonly offer?: string
  readonly take?: RouteKind; readonly name?: string; readonly person?: string
}

export async function makeRoutesCommand(options: RoutesOptions, out: Out): Promise<void> {
  const { data, json, take, name = '', person = '' } = options
  await withShop(data, async (store, { units }) => {
    const form = formFrom(options, options.unit ?? units.length), by = makerFor(person, device), found = await routesOfShop(store, form, by.atIso.slice(0, 10))
    const id = take === undefined ? null : await beginJob(store, { form, route: take, name }, by)
    out.answer(json ? `${JSON.stringify({ ...found, job: id })}\n` : routesText(found, units, out.columns))
    if (id !== null) out.say(`Kept as job ${id}.\n`)
  })
}

/** @throws Refusal `field-missing` where neither heights, a ladder nor a jaw was said; `value-not-allowed` for a ladder without its two ends */
function formFrom(options: RoutesOptions, unit: LengthUnit): OrderForm {
  const { heights, ladder, belowJaw, step = '', length, jawWidth, thickness, pairs, vises, use, hrc = '', due, faces, offer = '' } = options
  const by = heights !== undefined ? 'list' : ladder !== undefined ? 'ladder' : belowJaw !== undefined ? 'jaw' : null, [from, to] = ladder?.split(/\s*(?:-|–| to )\s*/) ?? []
  if (by === null) throw new Refusal('field-missing', { field: 'heights', given: null, needed: ['--heights', '--ladder', '--below-jaw'] })
  if (by === 'ladder' && (from === undefined || to === undefined)) throw new Refusal('value-not-allowed', { field: 'ladder', given: ladder!, needed: 'two heights, such as 12-44' })
  if (length === undefined && jawWidth === undefined) throw new Refusal('field-missing', { field: 'length', given: null, needed: ['--length', '--jaw-width'] })
  const inUnit = (mm: number) => (unit === 'mm' ? String(mm) : `${mm} mm`)
  return {
    unit, heightsBy: by, heights: heights ?? '', from: from ?? '', to: to ?? '', step, jawHeight: belowJaw ?? '', below: inUnit(0.5), lowest: inUnit(5), thickness, lengthBy: length === undefined ? 'jaw' : 'length', length: length ?? '', jawWidth: jawWidth ?? '', under: inUnit(1),
    pairs, vises, use, hrc, due: due ?? null, faces: faces === true, offer: { cost: offer, days: '', match: '', parallel: '' },
  }
}

function routesText({ answer: { order, routes, findings }, planned }: RoutesOfShop, units: Units, columns: number): string {
  const names = new Map([...planned.lengths, ...planned.plates, ...planned.machines].map(({ id, name }) => [id, name])), nameOf = (id: string) => names.get(id) ?? id
  const rowOf = ({ kind, status, cost, hours, days, expected }: Route) => {
    const { mark, word } = routeStatusWords[status]
    return [routeWords[kind], `${mark} ${word}`, sayMoney(cost.total, units), sayHours(hours, units), String(Math.ceil(days)), sayBand(expected.match.countOn, units)]
  }
  const item = (text: string) => wrapped(text, columns, '  · ')
  const whyOf = ({ kind, because, against, cost, expected }: Route) => {
    const from = sayExpectedFrom(expected)
    return [`\n${routeWords[kind]} (${sayCost(cost, units)})\n`, ...(from === '' ? [] : [item(`Expected: ${from}.`)]), ...[...because, ...against].map((one) => item(sayFinding(one, units, nameOf)))]
  }
  return [
    `${order.bars} bars: ${sayHeights(order.heightsMm, units)}, ${order.each} of each, ${wordLength(order.thicknessMm, units)} thick, ${wordLength(order.lengthMm, units)} long\n\n`,
    inColumns([['way', 'serves', 'cost', 'hours', 'days', 'mates, count on'], ...routes.map(rowOf)], [2, 3, 4]),
    ...routes.flatMap(whyOf),
    '\n', ...findings.map((one) => wrapped(sayFinding(one, units, nameOf), columns)),
  ].join('')
}
