import type { Finding } from '#model/finding.ts'
import { saySetupFinding } from '#words/say-setup-finding.ts'
import { barLabel } from '#web/setup/answer/say-choice.ts'
import { useDesk } from '#web/setup/desk.ts'

/** Findings in words, bars by the names they have at this bench. */
export function useSaying(): (finding: Finding) => string {
  const { bench, units } = useDesk()
  return (finding) => saySetupFinding(finding, units, (id) => barLabel(id, bench, units))
}
