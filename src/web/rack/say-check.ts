import type { Check, Look } from '#model/check.ts'
import { wordLength, wordNumber } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { listOf } from '#words/wording.ts'

const methods: { readonly [method in Check['method']]: string } = {
  'stated': 'height as marked', 'micrometer': 'micrometer', 'compare': 'on the plate', 'turn-over': 'on the plate, either face up', 'rock': 'tried for rocking',
}

/** What one check says about one bar, as it was typed: `on the plate against 25: +3, +4, +2; wiped, no rock`. */
export function sayCheck(check: Check, bar: string, units: Units): string {
  const { method, zero, readings, looks, asFound, replaces, took } = check
  const own = readings.filter((reading) => reading.bar === bar), faceB = own.filter(({ face }) => face === 'B'), look = looks.find((one) => one.bar === bar)
  const texts = [own.filter(({ face }) => face === 'A'), faceB].filter((face) => face.length > 0).map((face) => face.map(({ text }) => text).join(', ')).join(' / ')
  const against = zero === null ? '' : ` against ${zero.on === 'block' ? zero.text.trim() || wordLength(zero.heightMm, units) : `a bar of ${wordLength(zero.heightMm, units)}`}`
  const head = `${methods[method]}${against}${took?.instrument ? ` with ${took.instrument.name}` : ''}`
  return [
    `${head}${texts === '' ? '' : `: ${texts}`}`,
    ...(look ? [sayLook(look, units)].filter((said) => said !== '') : []),
    ...(asFound ? ['as found'] : []), ...(replaces === null ? [] : ['puts an earlier check right']),
  ].join('; ')
}

/** `wiped, stoned, no rock; bent and nicked`. */
export function sayLook({ wiped, stoned, rock, feelerUm, seen }: Look, { decimalMark }: Units): string {
  const feeler = feelerUm === null ? '' : `, a feeler of ${wordNumber(feelerUm, decimalMark, null, 1)} µm goes under`
  const done = [...(wiped ? ['wiped'] : []), ...(stoned ? ['stoned'] : []), ...(rock === 'none' ? ['no rock'] : rock === 'rocks' ? [`rocks${feeler}`] : [])]
  return [done.join(', '), listOf(seen)].filter((said) => said !== '').join('; ')
}
