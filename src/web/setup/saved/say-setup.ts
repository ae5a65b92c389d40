import type { SetupFields } from '#model/setup-record.ts'
import type { SetupForm } from '#model/setup-form.ts'
import type { Units } from '#model/shop-record.ts'
import { barLabel } from '#web/setup/answer/say-choice.ts'
import type { Bench } from '#web/setup/view/bench.ts'

/** A saved setup in two lines: its title and operation (or its part where it has none); its part and its bars. */
export function setupLines(setup: Pick<SetupFields, 'title' | 'operation' | 'form' | 'bars'>, bench: Bench, units: Units): readonly [title: string, more: string] {
  const part = sayPart(setup.form), named = [setup.title, setup.operation].filter((text) => text !== '').join(', ')
  const bars = [...new Set(setup.bars.filter((id) => bench.bars.has(id)).map((id) => barLabel(id, bench, units)))].join(' and ')
  return named === '' ? [part, bars] : [named, [part, bars].filter((text) => text !== '').join(' · ')]
}

/** `38 × 60 × 19, 6 off the top, 2 holes`, as it was typed; after decimal commas with semicolons. */
export function sayPart({ shape, height, between, along, offTop, cuts }: SetupForm): string {
  const size = shape === 'round' ? `⌀ ${[height, along].filter((text) => text !== '').join(' × ')}` : [between, along, height].filter((text) => text !== '').join(' × ')
  const holes = cuts.filter(({ kind }) => kind === 'hole').length, others = cuts.length - holes
  return [
    size, offTop.trim() === '' || offTop.trim() === '0' ? '' : `${offTop} off the top`,
    holes === 0 ? '' : `${holes} ${holes === 1 ? 'hole' : 'holes'}`, others === 0 ? '' : `${others} ${others === 1 ? 'cut' : 'cuts'}`,
  ].filter((text) => text !== '').join(`${size} ${offTop}`.includes(',') ? '; ' : ', ')
}
