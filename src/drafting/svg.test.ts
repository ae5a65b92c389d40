import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { galleryPictures } from '#drafting/gallery/scenes.ts'
import { boxOf, lineOf, textOf } from '#drafting/items.ts'
import type { Item, Scene } from '#drafting/scene.ts'
import { escaped, svgFile, svgFrom } from '#drafting/svg.ts'

const sceneOf = (...items: readonly Item[]): Scene => ({ title: 'Title', description: 'In words', widthMm: 100, heightMm: 50, items, fields: [] })
const screen = { medium: 'screen' } as const

describe('svgFrom', () => {
  test('writes what people typed as text, never as markup', () => {
    const svg = svgFrom({ ...sceneOf(textOf([1, 2], '<script>alert("x")</script> & \'y\'')), title: '</title><script>', description: '"><img onerror=1>' }, screen)
    expect(svg).toContain('&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt; &amp; &#39;y&#39;')
    expect(svg).not.toMatch(/<script|<img|onerror=1>/)
    expect(tagsOf(svg)).toEqual([])
  })

  test('drops control and direction characters and halves of pairs', () => {
    expect(escaped('a\u0000b\u001fc\u007fd\u202ee\ud800f\ufffeg')).toBe('abcdefg')
    expect(escaped('35\tC\n')).toBe('35 C ')
    expect(escaped('𝟛5')).toBe('𝟛5')
  })

  test('stays whole whatever is written on a bar', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (label) => {
      const svg = svgFrom(sceneOf(textOf([1, 1], label)), screen)
      expect(tagsOf(svg)).toEqual([])
      // oxlint-disable-next-line no-control-regex -- what XML 1.0 does not allow
      expect(svg).not.toMatch(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/)
    }), { numRuns: 300, seed: 1 })
  })

  test('is an image with a name and a description, its ids its own', () => {
    const svg = svgFrom(sceneOf(), { medium: 'screen', idPrefix: 'left' })
    expect(svg).toContain('role="img" aria-labelledby="left-title left-desc"')
    expect(svg).toContain('<title id="left-title">Title</title><desc id="left-desc">In words</desc>')
    expect([...svg.matchAll(/ id="([^"]+)"/g)].every(([, id]) => id!.startsWith('left-'))).toBe(true)
    expect(() => svgFrom(sceneOf(), { medium: 'screen', idPrefix: 'a" onload="' })).toThrow(RangeError)
  })

  test('is as large as the paper and rounds to a thousandth', () => {
    const svg = svgFrom(sceneOf(lineOf([1 / 3, -0.00001], [99.99999, 2], 'thin')), screen)
    expect(svg).toContain('width="100mm" height="50mm" viewBox="0 0 100 50"')
    expect(svg).toContain('d="M0.333 0L100 2"')
  })

  test('hatches parts that touch in different directions', () => {
    const svg = svgFrom(sceneOf(boxOf([0, 0], [1, 1], 'outline', 'cut-face'), boxOf([1, 0], [2, 1], 'outline', 'cut-face-back')), screen)
    const turn = (id: string) => new RegExp(`<pattern id="${id}"[^>]*patternTransform="rotate\\((-?\\d+)\\)"`).exec(svg)?.[1]
    expect([turn('drawing-face'), turn('drawing-face-back')]).toEqual(['45', '-45'])
    expect(svg).toContain('fill:url(#drawing-face)')
    expect(svg).toContain('fill:url(#drawing-face-back)')
  })

  test('takes the colours of the page on screen, and black alone in print', () => {
    for (const { name, scene } of galleryPictures()) {
      const shown = svgFrom(scene, screen), printed = svgFrom(scene, { medium: 'print' })
      expect(shown, name).toContain('var(--blue,')
      expect([...new Set(printed.match(/#[0-9a-f]{3,6}\b(?=[;}])|var\([^)]*\)/g))].toSorted(), name).toEqual(['#000', '#fff'])
      expect(tagsOf(shown), name).toEqual([])
    }
  })

  test('uses no class without a rule, and no fill by a pattern that is not there', () => {
    for (const { name, medium, scene } of galleryPictures()) {
      const svg = svgFrom(scene, { medium })
      const used = new Set([...svg.matchAll(/class="([^"]*)"/g)].flatMap(([, names]) => names!.split(' ')).filter((one) => one.startsWith('d-')))
      for (const one of used) expect(svg, `${name}: ${one}`).toContain(`.drawing-${medium} .${one}{`)
      for (const [, id] of svg.matchAll(/url\(#([^)]+)\)/g)) expect(svg, name).toContain(`<pattern id="${id}"`)
      expect(svg, name).not.toMatch(/NaN|Infinity|undefined/)
    }
  })
})

test('svgFile stands alone, on its own sheet', () => {
  const svg = svgFile(sceneOf(textOf([1, 1], '$& 35')))
  expect(svg.startsWith('<?xml version="1.0" encoding="UTF-8"?>\n<svg xmlns="http://www.w3.org/2000/svg"')).toBe(true)
  expect(svg).toContain('<rect class="d-fill-sheet" width="100" height="50"/>')
  expect(svg).toContain('font-family')
  expect(svg).toContain('$&amp; 35')
  expect(tagsOf(svg.replace(/^<\?xml.*\n/, ''))).toEqual([])
})

/** Tags left open or closed without having been opened; empty for a whole tree. */
function tagsOf(svg: string): readonly string[] {
  const open: string[] = []
  for (const [, close, name, self] of svg.matchAll(/<(\/?)([a-z]+)(?:\s[^<>]*?)?(\/?)>/g)) {
    if (self === '/') continue
    if (close !== '/') { open.push(name!); continue }
    if (open.at(-1) === name) open.pop()
    else open.push(`/${name}`)
  }
  return open
}
