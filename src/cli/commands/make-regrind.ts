import { readNumber } from '#model/length.ts'
import type { Use } from '#model/wishes.ts'
import type { RegrindOptions } from '#cli/commands/rack-regrind.ts'
import type { Out } from '#cli/out.ts'
import { device, withShop } from '#cli/with-shop.ts'
import { beginRegrind } from '#tasks/make/begin-regrind.ts'
import { makerFor } from '#tasks/maker.ts'

export type MakeRegrindOptions = RegrindOptions & { readonly use: Use; readonly name?: string; readonly person?: string }

export async function makeRegrindCommand(bars: readonly string[], { data, json, bothFaces, datum, cleanUp, use, name, person = '' }: MakeRegrindOptions, out: Out): Promise<void> {
  await withShop(data, async (store) => {
    const id = await beginRegrind(store, {
      bars, use, faces: bothFaces ? 2 : 1, ...(datum === undefined ? {} : { datumFace: datum }), ...(cleanUp === undefined ? {} : { cleanUpUm: readNumber(cleanUp, 'cleanUp') }), ...(name === undefined ? {} : { name }),
    }, makerFor(person, device))
    out.answer(json ? `${JSON.stringify({ job: id })}\n` : `Kept as job ${id}. Step by step: twinrest make job ${id}\n`)
  })
}
