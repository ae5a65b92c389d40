/**
 * How heights were come by. `stated`: marked on the bar or box, one reading, no uncertainty. `compare`: indicator on the
 * plate against a zero. `micrometer`: absolute local height. `turn-over`: compared with either face up. `rock`: no heights,
 * only whether it lies still.
 */
export const checkMethods = ['stated', 'compare', 'micrometer', 'turn-over', 'rock'] as const
export type CheckMethod = (typeof checkMethods)[number]
