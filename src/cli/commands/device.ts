import { inColumns, plainText } from '#cli/columns.ts'
import type { DataOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { device, withShop } from '#cli/with-shop.ts'
import { dismissDevice, inviteDevice, listDevices } from '#tasks/access/devices.ts'
import { makerFor } from '#tasks/maker.ts'

/** Eight letters in two groups, as they are read aloud. */
export async function deviceCodeCommand({ data }: DataOptions, out: Out): Promise<void> {
  await withShop(data, async (store) => {
    const { code, untilIso } = await inviteDevice(store, makerFor('', device))
    out.answer(`${code.slice(0, 4)} ${code.slice(4)}\n`)
    out.say(`Lets one device in, once, until ${untilIso.slice(11, 16)} UTC: open the shop's address on it and type the code.\n`)
  })
}

export async function deviceListCommand({ data, json }: DataOptions & { readonly json?: true }, out: Out): Promise<void> {
  await withShop(data, async (store) => {
    const devices = await listDevices(store)
    out.answer(json ? `${JSON.stringify(devices)}\n` : devices.length === 0 ? '' : inColumns([
      ['name', 'enrolled', 'revoked', 'id'],
      ...devices.map(({ id, name, atIso, revokedAtIso }) => [plainText(name), atIso.slice(0, 10), revokedAtIso?.slice(0, 10) ?? '', id]),
    ], []))
    if (!json && devices.length === 0) out.say('No device is enrolled. "twinrest device code" makes a code for one.\n')
  })
}

export async function deviceRevokeCommand(idOrName: string, { data }: DataOptions, out: Out): Promise<void> {
  await withShop(data, async (store) => {
    const { name } = await dismissDevice(store, idOrName, makerFor('', device))
    out.say(`${plainText(name)} is refused from its next request on. What it still keeps to be sent stays on it.\n`)
  })
}
