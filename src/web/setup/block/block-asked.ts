import { viseFrom } from '#engine/rack/vise-from.ts'
import { answerBlock } from '#engine/setup/block/answer-block.ts'
import { type LengthUnit, readLengthMm } from '#model/length.ts'
import type { ViseRecord } from '#model/vise-record.ts'
import type { RackPair } from '#web/setup/beside/rack-here.ts'

export const blockSizes = ['length', 'width', 'height'] as const
export type BlockTexts = { readonly [size in (typeof blockSizes)[number]]: string }
export const noSizes: BlockTexts = { length: '', width: '', height: '' }

export type BlockTyped = { readonly raw: BlockTexts; readonly finish: BlockTexts; readonly rod: string }

/** Every size is there; the rod may be left open. */
export const isGiven = ({ raw, finish }: BlockTyped): boolean => [raw, finish].every((texts) => blockSizes.every((size) => texts[size].trim() !== ''))

/** The orders in which the six faces can be cut. @throws Refusal of `readLengthMm` and of `answerBlock` */
export function blockAnswered({ raw, finish, rod }: BlockTyped, vise: ViseRecord, pairs: readonly RackPair[], unit: LengthUnit) {
  const of = (texts: BlockTexts, path: string) => Object.fromEntries(blockSizes.map((size) => [`${size}Mm`, readLengthMm(texts[size], unit, `${path}.${size}Mm`)]))
  return answerBlock({
    vise: viseFrom(vise), raw: of(raw, 'raw'), finish: of(finish, 'finish'), wishes: { gripMm: 'auto' }, ...(rod.trim() === '' ? {} : { rodMm: readLengthMm(rod, unit, 'rodMm') }),
    heights: pairs.map(({ id, heightMm, thicknessMm }) => ({ id, heightMm, thicknessMm })),
  })
}
