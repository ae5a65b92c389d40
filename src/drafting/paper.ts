/** Sheets of paper, upright, in mm. @source ISO-216 (A4); Letter is 8 1/2 × 11 in */
export const papers = {
  A4: { widthMm: 210, heightMm: 297 },
  Letter: { widthMm: 215.9, heightMm: 279.4 },
} as const
export type Paper = keyof typeof papers

/** Edge that common printers leave white. */
export const paperEdgeMm = 10
