import type { HeightWindow } from '#engine/rack/heights/ladder.ts'

/** Where a pair is made: the new order with the window carried over, in mm. */
export function makePath([lowMm, highMm]: HeightWindow, heightMm: number, viseId: string): string {
  const tidy = (mm: number) => String(Math.round(mm * 1e4) / 1e4)
  return `/make/new?${new URLSearchParams({ height: tidy(heightMm), low: tidy(lowMm), high: tidy(highMm), ...(viseId === '' ? {} : { vise: viseId }) }).toString()}`
}
