import type { TableBar } from '#engine/setup/table/table.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** Whether two bars would lie in one place, the first left and in front of the second. */
export const doOverlap = (one: TableBar, other: TableBar): boolean =>
  one.xMm + one.alongMm > other.xMm + touchMm && one.yMm + one.acrossMm > other.yMm + touchMm
