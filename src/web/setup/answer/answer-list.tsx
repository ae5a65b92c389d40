import { BesideLinks } from '#web/setup/beside/beside-links.tsx'
import { useDesk } from '#web/setup/desk.ts'
import { AlsoWork } from '#web/setup/answer/also-work.tsx'
import { AtLeastLine } from '#web/setup/answer/at-least-line.tsx'
import { SameAsLastTime } from '#web/setup/answer/first-line.tsx'
import { HeightsThatWork } from '#web/setup/answer/heights-that-work.tsx'
import { NearestRows } from '#web/setup/answer/nearest-rows.tsx'
import { NotComputed } from '#web/setup/answer/not-computed.tsx'
import { OpenPoints } from '#web/setup/answer/open-points.tsx'
import { OtherWays } from '#web/setup/answer/other-ways.tsx'
import { Sums } from '#web/setup/answer/sums.tsx'
import { ComesOut } from '#web/setup/predict/comes-out.tsx'
import { WhyNotField } from '#web/setup/answer/why-not-field.tsx'

/** What stands under the answer and scrolls by itself. */
export function AnswerList() {
  const { view: { waits } } = useDesk()
  return (
    <section className="setup-list" aria-label="More of the answer">
      {waits ? <SameAsLastTime /> : null}
      <AtLeastLine />
      <OpenPoints />
      <ComesOut />
      <AlsoWork />
      <NearestRows />
      <OtherWays />
      <HeightsThatWork />
      <WhyNotField />
      <Sums />
      <NotComputed />
      <BesideLinks />
    </section>
  )
}
