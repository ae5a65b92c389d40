import type { CheckMethod } from '#model/check-methods.ts'

/** How heights were come by, as prints say it. */
export const methodWords: { readonly [method in CheckMethod]: string } = {
  'compare': 'compared on the plate', 'micrometer': 'read with the micrometer', 'turn-over': 'compared on the plate with either face up', 'rock': 'tried for rocking', 'stated': 'height as marked',
}
