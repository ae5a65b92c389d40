import { expect, test } from 'vitest'
import { faultsOf } from '#drafting/gallery/faults.ts'
import { careCard } from '#drafting/rack/care-card.ts'
import { careWords } from '#words/say-care.ts'

test.each(['A4', 'Letter'] as const)('the card stays inside its edge on %s, nothing over anything else', (paper) => {
  const scene = careCard({ ...careWords, shop: 'Demo shop (invented)' }, paper)
  expect(faultsOf(scene)).toEqual([])
  const frame = scene.items.find((item) => item.kind === 'shape')!, [[left, top], , [right, bottom]] = frame.points as readonly [readonly [number, number], unknown, readonly [number, number]]
  for (const item of scene.items) if (item.kind === 'text') {
    expect(item.at[0]).toBeGreaterThan(left); expect(item.at[0]).toBeLessThan(right)
    expect(item.at[1]).toBeGreaterThan(top); expect(item.at[1]).toBeLessThan(bottom)
  }
})

test('it names what the trade asks: dry, oil, no foam, apart, flat stone, no stamp on a ground face', () => {
  const said = careWords.lines.join(' ').toLowerCase()
  for (const word of ['dry', 'oil', 'no foam', 'do not touch', 'flat stone', 'never stamp']) expect(said).toContain(word)
})
