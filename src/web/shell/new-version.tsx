import { useNewVersion } from '#web/keep/offline.ts'

/** A new version waits until a person says when: never in the middle of typing. */
export function NewVersion() {
  const take = useNewVersion()
  if (take === null) return null
  return <p className="strip no-print">A new version of Twinrest is here. <button type="button" className="press" onClick={take}>Use it</button></p>
}
