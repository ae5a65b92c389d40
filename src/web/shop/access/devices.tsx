import { useEffect, useState } from 'react'
import type { EnrolledDevice } from '#model/access.ts'
import { useStanding } from '#web/access.ts'
import { ask } from '#web/api.ts'
import { StatusLine } from '#web/parts/status-line.tsx'
import { useAsOwner } from '#web/shop/access/as-owner.ts'
import { CodeSheet, type Invited } from '#web/shop/access/code-sheet.tsx'
import { NameSheet } from '#web/shop/access/name-sheet.tsx'
import { OwnerSheet } from '#web/shop/access/owner-sheet.tsx'

export type Listed = {
  readonly devices: readonly EnrolledDevice[]
  readonly addresses: readonly string[]
  readonly trust: { readonly addresses: readonly string[]; readonly fingerprint: string } | null
}

/** The devices that are let in: a code for a new one, and taking one out again. */
export function Devices() {
  const standing = useStanding(), [listed, setListed] = useState<Listed | 'asking' | 'away'>('asking')
  const [invited, setInvited] = useState<Invited | null>(null), [named, setNamed] = useState<EnrolledDevice | null>(null)
  const { attempt, waiting, giveUp, trouble } = useAsOwner()
  const list = () => ask<Listed>('/api/devices').then(setListed, () => setListed('away'))
  useEffect(() => { void list() }, [])
  const invite = () => attempt(async () => setInvited(await ask<Invited>('/api/devices/code', {})))
  const rename = ({ id }: EnrolledDevice, name: string) => attempt(async () => {
    setNamed(null)
    await ask(`/api/devices/${id}/name`, { name })
    await list()
  })
  const revoke = ({ id }: EnrolledDevice) => attempt(async () => {
    await ask(`/api/devices/${id}/revoke`, {})
    await list()
  })
  return (
    <section>
      <h2>Devices</h2>
      {standing?.network ? null : <p>This shop is open to this machine alone. To let tablets in, set the owner’s passphrase below, and start the server with <code>twinrest serve --lan</code>.</p>}
      {listed === 'away' ? <StatusLine>The shop’s server holds the list and does not answer just now.</StatusLine> : null}
      {typeof listed === 'object' ? (
        <>
          {listed.devices.length > 0 ? (
            <ul className="rows">{listed.devices.map((device) => (
              <li key={device.id} className="vise-row">
                <span className="vise-link">
                  <strong className="name-text">{device.name}</strong>
                  <span>{saidOf(device, standing?.device?.id ?? null)}</span>
                </span>
                {device.revokedAtIso === null ? (
                  <span className="device-presses">
                    <button type="button" className="press" aria-label={`Name ${device.name} anew`} onClick={() => setNamed(device)}>Name</button>
                    <button type="button" className="press" aria-label={`Revoke ${device.name}`} onClick={() => revoke(device)}>Revoke</button>
                  </span>
                ) : null}
              </li>
            ))}</ul>
          ) : null}
          {listed.trust ? <p className="small">Fingerprint of the shop’s authority (SHA-256): <span className="fingerprint">{listed.trust.fingerprint.replaceAll(':', ' ')}</span></p> : null}
          {standing?.network ? <div className="actions"><button type="button" className="action" onClick={invite}>Let in a device</button></div> : null}
        </>
      ) : null}
      {trouble ? <StatusLine danger>{trouble}</StatusLine> : null}
      {named ? <NameSheet device={named} onName={(name) => rename(named, name)} onClose={() => setNamed(null)} /> : null}
      {waiting ? <OwnerSheet onClose={giveUp} onUnlocked={() => attempt(waiting)} /> : null}
      {invited && typeof listed === 'object' ? <CodeSheet invited={invited} listed={listed} onAgain={invite} onClose={() => { setInvited(null); void list() }} /> : null}
    </section>
  )
}

function saidOf({ id, atIso, revokedAtIso }: EnrolledDevice, own: string | null): string {
  return `${id === own ? 'this device, ' : ''}enrolled ${atIso.slice(0, 10)}${revokedAtIso === null ? '' : `, revoked ${revokedAtIso.slice(0, 10)}`}`
}
