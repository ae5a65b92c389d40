import { useMemo } from 'react'
import { buyingPages, type BuyingData } from '#drafting/make/list-sheets.ts'
import type { JobView } from '#engine/make/job/job-view.ts'
import type { JobRecord } from '#model/job-record.ts'
import { wordLength } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayFinding } from '#words/say-finding.ts'
import { conditionWords, sayCost, sayMoney } from '#words/say-make.ts'
import { capital } from '#words/wording.ts'
import { useJobKnown, useJobView } from '#web/make/facts.ts'
import { jobNamer } from '#web/make/job/job-namer.ts'
import { jobFrame, type PrintAsked } from '#web/make/print/job-frame.ts'
import { NothingToPrint, PrintFrame } from '#web/parts/print-frame.tsx'
import { today } from '#web/today.ts'
import { useUnits } from '#web/units.ts'
import { useTold } from '#web/use-told.ts'

/** What to take from the shelf, what to buy, and what is done outside. */
export function BuyingListPage({ shop, job }: { readonly shop: ShopSnapshot; readonly job: JobRecord }) {
  const units = useUnits(), view = useJobView(job, shop, useJobKnown(shop)), day = today(), back = { to: `/make/job/${job.id}`, name: 'Job' }, { paper } = shop.shop
  const data = useMemo(() => (view instanceof Refusal ? null : buyingFrom({ job, shop, units, day, view })), [job, shop, units, day, view])
  useTold({ jobId: job.id }, 'buying list', data)
  return data === null ? <NothingToPrint why="The plan cannot be worked out" back={back} /> : <PrintFrame title="Buying list" back={back} size={paper} pages={buyingPages(data, paper)} />
}

function buyingFrom(asked: PrintAsked & { readonly view: JobView }): BuyingData {
  const { job, shop, units, view: { route, order } } = asked, { lengths, plates } = job.planned!, { takings = [], short = [], findings = [] } = route.cuts ?? {}
  const nameOf = jobNamer(job, shop), mm = (value: number) => wordLength(value, units)
  const begun = [...lengths, ...plates].filter(({ id }) => takings.some(({ stockId }) => stockId === id))
  const rowOf = (stock: (typeof begun)[number]) => [
    stock.name, stock.steel, `${conditionWords[stock.condition]}, ${mm(stock.lengthMm)} × ${mm(stock.widthMm)} × ${mm(stock.thicknessMm)}`,
    takings.flatMap(({ stockId, heightMm, count }) => (stockId === stock.id ? [`${count} of ${mm(heightMm)}`] : [])).join(', '), stock.count === null ? 'buy' : `${stock.count} there`, sayMoney(stock.price, units),
  ]
  const missing = short.map(({ heightMm, count, widthMm, thicknessMm, lengthMm }) => [mm(heightMm), String(count), `${mm(widthMm)} × ${mm(thicknessMm)} × ${mm(lengthMm)}`])
  const outside = route.steps.filter((step) => step.outside).map(({ kind }) => [capital(kind)])
  return {
    ...jobFrame('Buying list', asked),
    tables: [
      { heading: 'Stock', table: { heads: ['name', 'steel', 'size', 'blanks out of it', 'at hand', 'price of one'], rows: begun.map(rowOf) }, shares: [2, 1.4, 3, 3, 1.2, 1.4] },
      ...(missing.length > 0 ? [{ heading: 'Stock that is missing', table: { heads: ['for height', 'blanks', 'at least: width × thickness × length'], rows: missing }, shares: [1, 1, 3] }] : []),
      ...(outside.length > 0 ? [{ heading: 'Done outside', table: { heads: ['step'], rows: outside }, shares: [1] }] : []),
    ],
    notes: {
      heading: 'Cost',
      lines: [
        `${route.cost.total === null ? '' : `${sayMoney(route.cost.total, units)}: `}${sayCost(route.cost, units)}.`,
        `${order.bars} bars; mates come out of one piece.`,
        ...findings.map((one) => sayFinding(one, units, nameOf)),
      ],
    },
  }
}
