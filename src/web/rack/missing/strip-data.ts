import type { CoverageStripData, StripVise, StripWindow } from '#drafting/rack/coverage-strip.ts'
import type { Coverage } from '#engine/rack/coverage/coverage.ts'
import type { CoverageQuestion } from '#engine/rack/coverage/coverage-question.ts'
import { type Want, wantsOf } from '#engine/rack/coverage/wants.ts'
import { type Bar, isFinished } from '#model/bar.ts'
import type { ViseRecord } from '#model/vise-record.ts'
import type { Terms } from '#words/terms.ts'

/** What the strips show: for each vise the heights that work of its setups, the pairs of the rack, and where some are missing. */
export function stripDataOf(question: CoverageQuestion, coverage: Coverage, bars: readonly Bar[], vises: readonly ViseRecord[], { vise: word }: Terms): CoverageStripData {
  const unserved = new Set(coverage.unserved.map(({ setup }) => setup)), wants = question.setups.flatMap((setup, k) => wantsOf(question, setup, k)).filter((want): want is Want => typeof want !== 'string')
  const owned = [...new Set(bars.filter(({ trust, mates }) => mates !== undefined && isFinished(trust)).map(({ heightMm }) => Math.round(heightMm * 100) / 100))]
  return {
    title: 'What is missing', description: `For each of ${question.vises.length} ${word}s the heights that work, the bars of the rack and where some are missing; the lists beside say the same in words.`,
    words: { served: 'served', unserved: 'not served', owned: 'pairs in the rack', missing: 'missing', more: (count) => `${count} more` },
    vises: question.vises.map(({ id, jawHeightMm }, k): StripVise => {
      const { setups, served, gaps } = coverage.vises[k]!
      return {
        name: vises.find((vise) => vise.id === id)?.name ?? '?', jawHeightMm, ownedMm: owned, gaps,
        says: setups === 0 ? 'no setups' : served === setups ? `all ${setups} served` : `${served} of ${setups} served`,
        windows: windowsOf(wants.filter((want) => want.vise === k), unserved, question),
      }
    }),
  }
}

/** Windows that are alike are one, with how many ask for it. */
function windowsOf(wants: readonly Want[], unserved: ReadonlySet<number>, { setups }: CoverageQuestion): readonly StripWindow[] {
  const alike = new Map<string, StripWindow>()
  for (const { setup, lowMm, highMm } of wants) {
    const served = !unserved.has(setup), key = `${lowMm} ${highMm} ${served}`, before = alike.get(key)
    alike.set(key, { lowMm, highMm, served, setups: (before?.setups ?? 0) + setups[setup]!.times })
  }
  return [...alike.values()]
}
