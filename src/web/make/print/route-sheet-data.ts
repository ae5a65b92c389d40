import { stepPicture } from '#drafting/make/step-picture.ts'
import type { RouteSheetData, SheetStep } from '#drafting/make/route-sheet.ts'
import type { JobView } from '#engine/make/job/job-view.ts'
import { readingKey } from '#engine/make/job/actuals-from.ts'
import { wordLength } from '#model/length.ts'
import type { PlannedStep } from '#model/make-plan.ts'
import { cautionsFor } from '#words/cautions.ts'
import { sayFinding } from '#words/say-finding.ts'
import { machineWords, sayHeights, sayHours, sayLimit, sayMoney, sayReading, saySize, sayStep } from '#words/say-make.ts'
import { capital, listOf } from '#words/wording.ts'
import { cardJobOf } from '#web/make/job/cards/card-job.ts'
import { jobNamer } from '#web/make/job/job-namer.ts'
import { stepPictureOf } from '#web/make/job/step-picture-of.ts'
import { computedLines } from '#web/make/print/computed-lines.ts'
import { jobFrame, type PrintAsked } from '#web/make/print/job-frame.ts'
import { sayDay } from '#web/today.ts'

/** Everything the route sheet says; what was done and read already stands on it, the rest are lines to write on. */
export function routeSheetFrom(asked: PrintAsked & { readonly view: JobView }): RouteSheetData {
  const { job, shop, view: { plan, route, order }, units } = asked, nameOf = jobNamer(job, shop)
  return {
    ...jobFrame('Route sheet', asked),
    facts: route.kind === 'regrind' ? [
      { label: 'Bars', value: listOf(plan.made.map(({ id }) => nameOf(id))) }, { label: 'New height', value: sayHeights(order.heightsMm, units) }, { label: 'Good for', value: order.use },
      { label: 'Hours planned', value: sayHours(plan.hours.planned, units) }, { label: 'Cost planned', value: sayMoney(route.cost.total, units) },
    ] : [
      { label: 'Bars', value: `${order.bars}` }, { label: 'Steel', value: route.steel ?? job.planned!.plates.concat(job.planned!.lengths).find(({ id }) => id === route.cuts?.takings[0]?.stockId)?.steel ?? '' },
      { label: 'Good for', value: order.use }, { label: 'Hardness', value: order.hrc === null ? 'soft will do' : `${order.hrc} HRC` },
      { label: 'Hours planned', value: sayHours(plan.hours.planned, units) }, { label: 'Cost planned', value: sayMoney(route.cost.total, units) },
    ],
    findings: { heading: 'To know before going on', lines: [...plan.findings, ...order.findings].map((one) => sayFinding(one, units, nameOf)) },
    cautionsHeading: 'Cautions', steps: plan.steps.map((step, at) => stepFrom(asked, step, at + 1)),
  }
}

function stepFrom({ job, shop, view, units }: PrintAsked & { readonly view: JobView }, step: PlannedStep, number: number): SheetStep {
  const nameOf = jobNamer(job, shop), { kind, sizes, reads, fields } = step, tick = job.done[kind], places = reads.flatMap((asked) => Array.from({ length: asked.places }, (_, place) => ({ ...asked, place })))
  const isTyped = job.bars.length > 0, isStock = kind === 'check the delivery' && job.route !== 'bought' && fields.every(({ values }) => values === null), written = kind === 'inspect' ? [] : isStock ? stockOf(job, view) : view.plan.made
  return {
    heading: `${number}  ${sayStep(kind)}`, where: `${step.outside ? 'outside' : step.machine === null ? 'at the bench' : `at the ${machineWords[step.machine]}`}, ${sayHours(step.hours, units)}`,
    picture: stepPicture(stepPictureOf({ blanks: view.route.blanks, kind, units, plain: false })),
    lines: step.content.map((one) => sayFinding(one, units, nameOf)), computed: computedLines(cardJobOf(job, view), step, units, nameOf),
    sizes: { heads: ['for height', 'size after this step, height × thickness × length'], rows: sizes.map(({ heightMm, size }) => [wordLength(heightMm, units), saySize(size, units)]) },
    readings: {
      heads: places.map(({ what, place, places: of }) => {
        const limits = [...new Set(fields.filter((field) => field.what === what).map((field) => sayLimit(field, units)))]
        return `${what === 'hardness' ? 'HRC' : isStock && what === 'height' ? `Width, ${units.length}` : capital(sayReading(what, units))}${of > 1 ? ` ${place + 1}` : ''}${limits.length === 1 && limits[0] !== '' && place === 0 ? `, ${limits[0]}` : ''}`
      }),
      rows: places.length === 0 ? [] : written.map(({ id }) => ({ name: isTyped && !isStock ? nameOf(id) : id, cells: places.map(({ what, place }) => job.typed[readingKey(kind, id, what, place)] ?? '') })),
    },
    cautions: step.cautions.length === 0 ? [] : cautionsFor(new Set(step.cautions), units),
    done: [{ label: 'Done on', value: tick ? sayDay(tick.atIso) : '' }, { label: 'by', value: tick?.person ?? '' }, { label: 'hours', value: tick?.hours ?? '' }],
  }
}

/** Before anything is cut, the stock it comes out of is what can be measured. */
function stockOf({ planned }: PrintAsked['job'], { route: { cuts } }: JobView): { readonly id: string }[] {
  return (cuts?.begun ?? []).map(({ stockId }) => ({ id: [...planned!.lengths, ...planned!.plates].find(({ id }) => id === stockId)!.name }))
}
