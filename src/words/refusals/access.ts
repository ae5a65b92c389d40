import { field, given } from '#words/refusals/input.ts'
import type { Say } from '#words/wording.ts'

/** Who may talk to the shop, and what only its owner may do. */
export const accessRefusals: { readonly [code: string]: Say } = {
  'device-not-enrolled': () => 'This device is not enrolled in the shop. Ask for a code (Shop, Devices), and enrol it; what was done here stays on the device and is sent then.',
  'enrol-code-not-valid': () => 'This code lets nobody in: it was mistyped, used already, or is older than ten minutes. Have a new one made under Shop, Devices.',
  'device-not-known': (facts, w) => `There is no device ${given(facts, w)}.`,
  'which-device': (facts, w) => `Several devices are called ${given(facts, w)}: name one by its id (${w.text(facts.needed, 'or')}).`,
  'owner-needed': () => 'This is for the owner of the shop: give the passphrase first (Shop, Owner).',
  'passphrase-not-set': () => 'No passphrase is set yet: set one on the machine itself, under Shop, or with twinrest owner passphrase.',
  'passphrase-needed': () => 'Opening the shop to the network needs an owner: set a passphrase first, with twinrest owner passphrase, or under Shop on this machine.',
  'passphrase-wrong': () => 'This is not the passphrase.',
  'passphrase-too-short': (facts, w) => `A passphrase has ${w.number(facts.needed)} letters or more: a short sentence is easy to keep.`,
  'passphrase-too-long': (facts, w) => `A passphrase has ${w.number(facts.needed)} letters at most.`,
  'passphrase-not-alike': () => 'The two passphrases are not alike; nothing was changed.',
  'machine-only': () => 'The first passphrase is set on the machine the shop runs on: open the shop there, or use twinrest owner passphrase.',
  'too-many-tries': (facts, w) => `Too many at once: try again in ${w.number(facts.waitS)} s.`,
  'https-needed': () => 'This shop is reached by https; open its address with https://, or /trust here to make this device trust it.',
  'forwarded-unexpected': () => 'The request was passed on by a proxy, which this server was not told about: start it with --behind-proxy.',
  'certificate-without-key': (facts, w) => `${w.text(facts.given)} needs ${w.text(facts.needed)} beside it.`,
  'certificate-not-usable': (facts, w) => `${w.text(facts.given)} cannot be used as a certificate with its key (${w.text(facts.reason)}).`,
  'lan-or-proxy': () => 'Either --lan or --behind-proxy: behind a proxy the server is heard on this machine alone, and the proxy lets the others in.',
  'host-name-not-valid': (facts, w) => `${field(facts, w)}: ${given(facts, w)} is no name or address of a machine.`,
}
