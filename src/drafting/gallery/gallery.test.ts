import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { galleryPictures } from '#drafting/gallery/scenes.ts'
import { svgFrom } from '#drafting/svg.ts'

/**
 * The gallery holds every drawing against the file that somebody looked at last. TWINREST_REDRAW=1 rewrites the files and
 * always fails, so that a run that passed has read them.
 */
const folder = fileURLToPath(new URL('../../../fixtures/drawings/', import.meta.url))
const redraw = process.env['TWINREST_REDRAW'] === '1'
const drawn = galleryPictures().map(({ name, medium, scene }) => ({ file: `${name}.svg`, svg: svgFrom(scene, { medium, idPrefix: name }) }))

describe('gallery', () => {
  if (redraw) {
    test('redraws all files and fails, to be looked at and run again', () => {
      rmSync(folder, { recursive: true, force: true })
      mkdirSync(folder, { recursive: true })
      for (const { file, svg } of drawn) writeFileSync(join(folder, file), svg)
      expect.fail(`${drawn.length} drawings rewritten: look at each, then run without TWINREST_REDRAW`)
    })
  }

  test('has at least 20 pictures, each with a name and file of its own', () => {
    expect(drawn.length).toBeGreaterThanOrEqual(20)
    expect(new Set(drawn.map(({ file }) => file)).size).toBe(drawn.length)
  })

  test('has no file without its picture', () => {
    expect(readdirSync(folder).toSorted()).toEqual(drawn.map(({ file }) => file).toSorted())
  })

  test.each(drawn)('$file is drawn as before', ({ file, svg }) => {
    expect(existsSync(join(folder, file)), `${file} was never drawn: TWINREST_REDRAW=1`).toBe(true)
    expect(svg).toBe(readFileSync(join(folder, file), 'utf8'))
  })
})
