import { describe, expect, it } from 'vitest'
import { sayField } from '#words/say-field.ts'
import { termsFor } from '#words/terms.ts'

const us = termsFor('US'), uk = termsFor('UK')

describe('where something is amiss', () => {
  it.each([
    ['part.heightMm', 'part height'],
    ['part.betweenJawsMm', 'part, between jaws'],
    ['vise.jawHeightMm', 'vise, jaw height'],
    ['cuts[0].diameterMm', 'hole 1, diameter'],
    ['cuts[0].diameter', 'hole 1, diameter'],
    ['cuts[2].depthMm', 'cut 3, depth'],
    ['cuts[1].rect.x0Mm', 'cut 2, place in the plan, left side'],
    ['part.hollows[0].y1Mm', 'part, hollow 1, side toward the movable jaw'],
    ['bars[41].id', 'bar 42, id'],
    ['cuts[1].nearEdgeMm', 'hole 2, from near edge'],
    ['vises[1].bedUm', 'vise 2, height of the bed'],
    ['wishes.gripMm', 'grip'],
    ['offTop', 'off the top'],
    ['', 'the input'],
    ['part.colour', "part, 'colour'"],
    ['__proto__', "'__proto__'"],
    ['constructor', "'constructor'"],
  ])('%s is said as %s', (path, said) => {
    expect(sayField(path, us)).toBe(said)
  })

  it('follows the region', () => {
    expect(sayField('vise.openingMm', uk)).toBe('vice, opening')
    expect(sayField('part.hollows[0].y1Mm', uk)).toBe('part, hollow 1, side toward the moving jaw')
  })
})
