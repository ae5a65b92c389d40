import { describe, expect, test } from 'vitest'
import { galleryPictures } from '#drafting/gallery/scenes.ts'
import { boxOf, lineOf, textOf } from '#drafting/items.ts'
import type { Item, Scene } from '#drafting/scene.ts'
import { terminalFrom } from '#drafting/terminal.ts'

const sceneOf = (...items: readonly Item[]): Scene => ({ title: '', description: '', widthMm: 10, heightMm: 4, items, fields: [] })

describe('terminalFrom', () => {
  test('draws a line along the top of two cells as their upper dots', () => {
    // Ten columns over 10 mm: a cell is 1 mm wide, its dots half a millimetre apart. Braille dots 1 and 4 are U+2801 and U+2808.
    expect(terminalFrom(sceneOf(lineOf([0, 0], [1.5, 0], 'outline')), 10)).toBe('⠉⠉\n\n')
  })

  test('hides what lies under a sheet, and letters over lines', () => {
    const behind = lineOf([0, 1], [9.5, 1], 'outline')
    expect(terminalFrom(sceneOf(behind, boxOf([0, 0], [10, 4], 'none', 'sheet')), 10)).toBe('\n\n')
    expect(terminalFrom(sceneOf(behind, textOf([5, 1], '35 C', { anchor: 'middle' })), 10).split('\n')[0]).toMatch(/^\S{3}35 C\S{3}$/)
  })

  test('letters upright text letter under letter', () => {
    const tall = { ...sceneOf(textOf([4.5, 5], 'AB', { anchor: 'middle', turnDeg: 90 })), heightMm: 10 }
    expect(terminalFrom(tall, 10).split('\n').map((line) => line.trim()).join('')).toBe('AB')
  })

  test('drops control characters, so that no label moves the cursor', () => {
    // oxlint-disable-next-line no-control-regex -- they are what is looked for
    expect(terminalFrom(sceneOf(textOf([0, 1], 'a\u001b[2Jb\u0007')), 10)).not.toMatch(/[\u0000-\u0009\u000b-\u001f]/)
  })

  test('keeps every drawing within its columns, with the labels and the jaws to be seen', () => {
    for (const { name, scene } of galleryPictures().filter((picture) => picture.name.startsWith('setup-'))) {
      const lines = terminalFrom(scene, 80).split('\n')
      expect(Math.max(...lines.map((line) => Array.from(line).length)), name).toBeLessThanOrEqual(80)
      expect(lines.join('\n').match(/[\u2800-\u28ff]/g)?.length ?? 0, name).toBeGreaterThan(300)
    }
    const inboard = terminalFrom(galleryPictures().find(({ name }) => name === 'phone-inboard')!.scene, 80)
    for (const word of ['fixed jaw', 'movable jaw', 'grip 10', 'clear 3', '35 C', '19', '45']) expect(inboard).toContain(word)
  })
})
