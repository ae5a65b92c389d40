import { saySetupFinding } from '#words/say-setup-finding.ts'
import { useDesk } from '#web/setup/desk.ts'

/** What choosing bars says nothing about. */
export function NotComputed() {
  const { view: { answered }, units } = useDesk()
  const found = answered?.answer.findings.filter(({ code }) => code === 'not-computed') ?? []
  return found.length === 0 ? null : <p className="setup-lines setup-open">{found.map((finding) => saySetupFinding(finding, units)).join(' ')}</p>
}
