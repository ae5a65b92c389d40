import { lowerJawMm } from '#engine/rack/vise-from.ts'
import { heightToMake } from '#engine/setup/height-to-make.ts'
import { wordLength } from '#model/length.ts'
import { beginJob } from '#web/make/job-edits.ts'
import { heightStepMm, orderFor } from '#web/make/order-for.ts'
import { go } from '#web/router.ts'
import { useDesk } from '#web/setup/desk.ts'

/** Where nothing serves: an order in Make for a pair that would, as thick as the nearest one that only its height keeps out. */
export function MakeOne() {
  const { shop, bench: { vise, jaws, bars }, units, state: { form }, view: { answered } } = useDesk()
  const make = answered?.answer.make ?? null
  if (answered === null || make === null) return null
  const near = answered.nearest.find(({ rejection: { reasons } }) => reasons.every((reason) => reason === 'too-low' || reason === 'too-high'))?.rejection.bars[0]
  const thicknessMm = near === undefined ? null : bars.get(near)?.thicknessMm ?? null, say = (mm: number) => wordLength(mm, units)
  const begin = () => {
    const heightMm = heightToMake([make.lowMm, make.highMm], heightStepMm(units))
    go(`/make/order/${beginJob(orderFor(shop, [{ heightMm, ...make }], units, {
      use: form.use, jawWidth: say(vise.jawWidthMm), jawHeight: say(lowerJawMm(jaws)), ...(thicknessMm === null ? {} : { thickness: say(thicknessMm) }),
    }))}`)
  }
  return <button type="button" className="action setup-make" onClick={begin}>Make a pair of {say(make.lowMm)} to {say(make.highMm)}</button>
}
