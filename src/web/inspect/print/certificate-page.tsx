import { useMemo } from 'react'
import { certificatePages } from '#drafting/inspect/certificate.ts'
import { checkedOf } from '#engine/inspect/checked.ts'
import { withUnit } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { barNamer } from '#web/inspect/bar-names.ts'
import { useInspectFacts } from '#web/inspect/facts.ts'
import { certificateFrom } from '#web/inspect/print/certificate-data.ts'
import { NothingToPrint, PrintFrame } from '#web/parts/print-frame.tsx'
import { sayDay, today } from '#web/today.ts'
import { useUnits } from '#web/units.ts'
import { useTold } from '#web/use-told.ts'

/** A kept check as its certificate on paper. What is printed is kept as it was told. */
export function CertificatePage({ shop, checkId }: { readonly shop: ShopSnapshot; readonly checkId: string }) {
  const units = useUnits(), facts = useInspectFacts(shop), check = shop.checks.find(({ id }) => id === checkId), day = today()
  const data = useMemo(() => {
    if (!check) return null
    const lengthMmOf = (bar: string): number | null => shop.bars.find(({ id }) => id === bar)?.lengthMm ?? null
    const checked = checkedOf(check, { limitsUm: shop.shop.limitsUm, lengthMmOf }), ids = checked.bars.map(({ id }) => id)
    return certificateFrom({
      check, checked, shop, units, lengthMmOf, nameOf: barNamer(ids, shop, facts, units), today: sayDay(day), dayOf: sayDay,
      zeroName: check.zero === null ? 'zero: first reading' : check.zero.on === 'block' ? `zero: block of ${withUnit(checked.zeroMm, units)}` : `zero: ${withUnit(checked.zeroMm, units)}`,
    })
  }, [check, shop, units, facts, day])
  useTold({ checkId }, 'certificate', data)
  if (!data) return <NothingToPrint why="There is no such check" back={{ to: '/inspect', name: 'Inspect' }} />
  const { paper } = shop.shop
  return <PrintFrame title="Certificate" back={{ to: `/inspect/done/${checkId}`, name: 'Check' }} size={paper} pages={certificatePages(data, paper)} />
}
