import type { DataOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { readSecret } from '#cli/read-secret.ts'
import { device, withShop } from '#cli/with-shop.ts'
import { Refusal } from '#model/refusal.ts'
import { setPassphrase } from '#tasks/access/owner.ts'
import { makerFor } from '#tasks/maker.ts'

/** Asked twice at a terminal; one line where standard input is a file or a pipe. */
export async function ownerPassphraseCommand({ data }: DataOptions, out: Out): Promise<void> {
  const typed = await readSecret(process.stdin.isTTY ? ["Owner's passphrase: ", 'Once more: '] : [''], out)
  if (new Set(typed).size > 1) throw new Refusal('passphrase-not-alike')
  await withShop(data, async (store) => { await setPassphrase(store, typed[0]!, makerFor('', device)) })
  out.say('The passphrase is set. It is asked for by new devices, new initials and whatever cannot be taken back.\n')
}
