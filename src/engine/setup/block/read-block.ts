import { Refusal } from '#model/refusal.ts'
import type { BlockPair, BlockQuestion, BlockSizes } from '#engine/setup/block/block-question.ts'
import { readHeight, refuseUnfitHeights } from '#engine/setup/many/read-heights.ts'
import { readVise } from '#engine/setup/read-part.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import type { RawObject } from '#engine/read/raw-object.ts'
import { defaultWishes, readWishes } from '#engine/setup/read-wishes.ts'
import { refuseImpossible } from '#engine/setup/refuse.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** mm. A rod of common size. Common practice, no source. @source SETUP-RULES */
const commonRodMm = 10

/**
 * A raw `block` case.
 *
 * @throws Refusal with a malformed code, then as `refuseImpossible` (of vise, raw block and wishes), `size-not-positive`
 * (finished sizes, pairs, rod), `bar-id-twice`, `finish-above-raw`
 */
export function readBlockCase(raw: unknown): { readonly question: BlockQuestion } & Ignored {
  const { value: question, ignored } = readCase(raw, (object): BlockQuestion => ({
    vise: object.object('vise', readVise)!,
    raw: object.object('raw', readSizes)!, finish: object.object('finish', readSizes)!,
    heights: object.has('heights') ? object.list('heights', readPair) : null,
    rodMm: object.numberOr('rodMm', commonRodMm),
    wishes: object.objectOr('wishes', readWishes, defaultWishes),
  }))
  refuseUnfit(question)
  return { question, ignored }
}

const readSizes = (raw: RawObject): BlockSizes => ({ lengthMm: raw.number('lengthMm'), widthMm: raw.number('widthMm'), heightMm: raw.number('heightMm') })

const readPair = (raw: RawObject): BlockPair => ({ ...readHeight(raw), thicknessMm: raw.numberOr('thicknessMm', null) })

const sizeNames = ['lengthMm', 'widthMm', 'heightMm'] as const

function refuseUnfit({ vise, raw, finish, heights, rodMm, wishes }: BlockQuestion): void {
  // in the first step the wider size of the raw block lies between the jaws
  const wider = raw.widthMm >= raw.heightMm ? 'widthMm' : 'heightMm', thinner = wider === 'widthMm' ? 'heightMm' : 'widthMm'
  const fieldOf: { readonly [path: string]: string } = { 'part.betweenJawsMm': `raw.${wider}`, 'part.heightMm': `raw.${thinner}`, 'part.alongJawsMm': 'raw.lengthMm' }
  refuseImpossible({ vise, part: { shape: 'block', hollows: [], betweenJawsMm: raw[wider], heightMm: raw[thinner], alongJawsMm: raw.lengthMm }, cuts: [], wishes }, (path) => fieldOf[path] ?? path)
  const more = [...sizeNames.map((name) => [`finish.${name}`, finish[name]] as const), ['rodMm', rodMm] as const,
    ...(heights ?? []).flatMap(({ thicknessMm }, k) => (thicknessMm === null ? [] : [[`heights[${k}].thicknessMm`, thicknessMm] as const]))]
  for (const [field, given] of more) if (given <= touchMm) throw new Refusal('size-not-positive', { field, given, needed: { aboveMm: 0 } })
  refuseUnfitHeights(heights ?? [])
  for (const name of sizeNames) {
    if (finish[name] > raw[name] + touchMm) throw new Refusal('finish-above-raw', { field: `finish.${name}`, given: finish[name], needed: { mostMm: raw[name] } })
  }
}
