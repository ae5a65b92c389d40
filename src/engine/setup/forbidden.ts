/**
 * What is in the way of one bar at one y: for each obstacle that reaches it, the open interval of left ends that it
 * forbids. Filled anew for each y; `count` of the entries count, `of` says which obstacle each is.
 */
export type Forbidden = { count: number; readonly of: Int32Array; readonly from: Float64Array; readonly to: Float64Array }

export const forbiddenFor = (obstacles: number): Forbidden => ({
  count: 0, of: new Int32Array(obstacles), from: new Float64Array(obstacles), to: new Float64Array(obstacles),
})
