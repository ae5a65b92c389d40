import type { Units } from '#model/shop-record.ts'
import { inColumns, plainText } from '#cli/columns.ts'
import type { JsonOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { withShop } from '#cli/with-shop.ts'
import { wrapped } from '#cli/wrapped.ts'
import { recordsOf } from '#store/records.ts'
import { type JobLine, type JobOfShop, jobOfShop, listJobs } from '#tasks/make/jobs-of-shop.ts'
import { cautionsFor } from '#words/cautions.ts'
import { sayFinding } from '#words/say-finding.ts'
import { routeWords, sayHeights, sayHours, sayLimit, sayReading, saySize, sayStep } from '#words/say-make.ts'
import type { NameOf } from '#words/wording.ts'

export async function makeJobsCommand({ data, json }: JsonOptions, out: Out): Promise<void> {
  await withShop(data, async (store, { units }) => {
    const jobs = await listJobs(store)
    out.answer(json ? `${JSON.stringify(jobs)}\n` : jobs.length === 0 ? '' : inColumns([['name', 'way', 'heights', 'steps', 'next', 'left', 'job'], ...jobs.map((job) => rowOf(job, units))]))
    if (!json) out.say(jobs.length === 0 ? 'No jobs yet. Begin one with "twinrest make routes … --take".\n' : `${jobs.length} ${jobs.length === 1 ? 'job' : 'jobs'}\n`)
  })
}

function rowOf({ id, name, route, heightsMm, done, steps, next, hoursLeft, state, refused }: JobLine, units: Units): readonly string[] {
  const way = route === null ? 'order being written' : routeWords[route]
  return [plainText(name) || '–', way, heightsMm.length === 0 ? '–' : sayHeights(heightsMm, units), refused ?? `${done} of ${steps}`, state === 'done' ? 'made' : next === null ? '–' : sayStep(next), hoursLeft === null ? '–' : sayHours(hoursLeft, units), id]
}

export async function makeJobCommand(wanted: string, { data, json }: JsonOptions, out: Out): Promise<void> {
  await withShop(data, async (store, { units }) => {
    const found = await jobOfShop(store, wanted)
    if (json) { out.answer(`${JSON.stringify(found)}\n`); return }
    const names = new Map((await recordsOf(store, 'bar')).map(({ id, name }) => [id, name]))
    out.answer(jobText(found, units, (id) => plainText(names.get(id) || id), out.columns))
  })
}

function jobText({ job, view: { plan, order } }: JobOfShop, units: Units, nameOf: NameOf, columns: number): string {
  const item = (text: string) => wrapped(text, columns, '    · ')
  return [
    `${plainText(job.name) || job.id}: ${routeWords[job.route!]}, ${order.bars} bars, ${sayHours(plan.hours.taken, units)} taken, ${sayHours(plan.hours.left, units)} left\n`,
    ...plan.findings.map((one) => wrapped(sayFinding(one, units, nameOf), columns, '  ! ')),
    ...plan.steps.flatMap(({ kind, state, content, sizes, fields, cautions }, at) => [
      `\n${state === 'done' ? '✓' : state === 'next' ? '▸' : ' '} ${at + 1} ${sayStep(kind)}\n`,
      ...content.map((one) => item(sayFinding(one, units, nameOf))),
      ...sizes.map(({ size }) => `    ${saySize(size, units)}\n`),
      ...fields.flatMap((field) => (field.values === null ? [] : [`    ${nameOf(field.bar)}: ${sayReading(field.what, units)} ${field.values.join(', ')}${field.isInside === false ? ` ! ${sayLimit(field, units)}` : ''}\n`])),
      ...(cautions.length > 0 && state !== 'done' ? cautionsFor(new Set(cautions), units).map(item) : []),
    ]),
  ].join('')
}
