/** Sum of products in twice the precision of a double, rounded once. @source DOT2 */
export function dotOf(a: readonly number[], b: readonly number[]): number {
  let sum = 0, lost = 0
  for (let i = 0; i < a.length; i += 1) {
    const x = a[i]!, y = b[i]!, product = x * y
    const next = sum + product, part = next - sum
    lost += sum - (next - part) + (product - part) + productLoss(x, y, product)
    sum = next
  }
  return sum + lost
}

/** What rounding took from x · y, exactly, unless something over- or underflows. */
function productLoss(x: number, y: number, product: number): number {
  const xHigh = highHalf(x), xLow = x - xHigh, yHigh = highHalf(y), yLow = y - yHigh
  return xLow * yLow - (product - xHigh * yHigh - xLow * yHigh - xHigh * yLow)
}

/** The upper 26 bits of a double. */
function highHalf(value: number): number {
  const shifted = 134217729 * value
  return shifted - (shifted - value)
}
