import type { JsonOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { networkNames, ownNames, readHostName } from '#server/access/machine-names.ts'
import { dataFolderFrom } from '#server/config.ts'
import { renewCertificate } from '#tasks/access/certificate/shop-certificate.ts'

export type CertificateOptions = JsonOptions & { readonly hostName?: readonly string[]; readonly newAuthority?: true }

/** The certificate of the shop and its authority, made or looked after. */
export async function certificateCommand({ data, hostName = [], newAuthority, json }: CertificateOptions, out: Out): Promise<void> {
  const names = [...networkNames(hostName.map(readHostName)), ...ownNames]
  const { made, fingerprint, untilIso, names: shown } = await renewCertificate(dataFolderFrom(data, process.env), names, Date.now(), { newAuthority: newAuthority === true })
  if (json) return out.answer(`${JSON.stringify({ made, fingerprint, untilIso, names: shown })}\n`)
  out.answer(`Names: ${shown.join(', ')}\nUntil: ${untilIso.slice(0, 10)}\nFingerprint of the authority (SHA-256):\n${fingerprint}\n`)
  out.say(`${said[made]}\n`)
}

const said = {
  authority: 'A new authority was made, and a certificate by it. Every device has to be made to trust it: start "twinrest serve --lan" and open /trust on each.',
  certificate: 'The certificate was made anew; devices notice nothing. A server that runs takes it by itself within twelve hours, or when it is started again.',
  nothing: 'The certificate stands; nothing was changed. It is made anew by itself a month before its end.',
} as const
