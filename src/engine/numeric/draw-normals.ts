import { drawUnit, drawWord, type Generator } from '#engine/numeric/generator.ts'

/**
 * Fills a list with independent standard normal values (ziggurat, one word for most values).
 *
 * Bit for bit the same on every machine: nothing but + − × ÷, comparisons and tables made from them. A word gives layer
 * and place apart, 8 and 24 bits, so values lie on a raster of at most 4.4e-7.
 *
 * @source ZIGGURAT
 */
export function drawNormals(generator: Generator, into: Float64Array): void {
  for (let i = drawSure(generator, into, 0); i < into.length; i = drawSure(generator, into, i + 1)) into[i] = drawFrom(generator, into[i]!)
}

/**
 * Fills a list from a place on as long as a word is all it takes. Gives the place where it is not, with the word left in it:
 * the end of the list where there is none.
 */
function drawSure(generator: Generator, into: Float64Array, from: number): number {
  const sure = surePlaces, widths = placeWidths
  let s0 = generator[0]! | 0, s1 = generator[1]! | 0, s2 = generator[2]! | 0, s3 = generator[3]! | 0, i = from
  for (; i < into.length; i += 1) {
    // The steps of drawWord, written out so that the state stays in registers.
    const times5 = Math.imul(s1, 5), word = Math.imul((times5 << 7) | (times5 >>> 25), 9), shifted = s1 << 9
    s2 ^= s0; s3 ^= s1; s1 ^= s2; s0 ^= s3; s2 ^= shifted
    s3 = (s3 << 11) | (s3 >>> 21)
    const layer = word & 255, place = word >> 8
    // Math.abs, not a branch: the sign of a random value cannot be foreseen.
    if (Math.abs(place) >= sure[layer]!) { into[i] = word; break }
    into[i] = place * widths[layer]!
  }
  generator[0] = s0; generator[1] = s1; generator[2] = s2; generator[3] = s3
  return i
}

/** A normal value from a word just drawn and as many more as it takes. */
function drawFrom(generator: Generator, word: number): number {
  for (let next = word; ; next = drawWord(generator) | 0) {
    const layer = next & 255, z = (next >> 8) * placeWidths[layer]!, size = Math.abs(z)
    if (size < edges[layer + 1]!) return z
    if (layer === 0) return z < 0 ? -drawTail(generator) : drawTail(generator)
    const low = heights[layer]!, high = heights[layer + 1]!, wide = edges[layer]! - edges[layer + 1]!
    // Nowhere is the curve further from its chord than an eighth of the square of the width: mostly the chord alone decides.
    const height = low + (high - low) * drawUnit(generator), aboveChord = height - low - ((high - low) * (edges[layer]! - size)) / wide
    if (Math.abs(aboveChord) > (wide * wide) / 8 ? aboveChord < 0 : height < bell(size)) return z
  }
}

/** Beyond the last edge. @source ZIGGURAT */
function drawTail(generator: Generator): number {
  for (;;) {
    const beyond = drawExponential(generator) / tailFrom
    if (2 * drawExponential(generator) > beyond * beyond) return tailFrom + beyond
  }
}

/** An exponential value by comparisons alone: the run of falling draws is of odd length with chance e^−u. @source AMS-12 */
function drawExponential(generator: Generator): number {
  for (let whole = 0; ; whole += 1) {
    const first = drawUnit(generator)
    let odd = true
    for (let last = first, next = drawUnit(generator); next < last; last = next, next = drawUnit(generator)) odd = !odd
    if (odd) return whole + first
  }
}

/** exp(−z²/2) for z up to 4, from + − × ÷ alone: a short series of the 256th part, squared eight times. */
function bell(z: number): number {
  const part = (-0.5 * z * z) / 256
  let power = 1
  for (let k = 8; k > 0; k -= 1) power = 1 + (part * power) / k
  for (let k = 0; k < 8; k += 1) power *= power
  return power
}

/** Where the lowest layer ends and the tail begins, and the area of every layer. @source ZIGGURAT */
const tailFrom = 3.6541528853610088
const layerArea = 0.004928673233974655
const layers = 256
const placesToEdge = 2 ** 23

/** Right ends of the layers from the lowest, which is as wide as its area asks; the top one ends at 0. */
const edges = edgesFrom()
const heights = edges.map((edge, layer) => (layer === 0 ? 0 : bell(edge)))
/** Width of a place in each layer; places nearer to 0 than this many lie under the curve whatever their height. */
const placeWidths = Float64Array.from({ length: layers }, (_, layer) => edges[layer]! / placesToEdge)
const surePlaces = Int32Array.from({ length: layers }, (_, layer) => Math.floor((edges[layer + 1]! / edges[layer]!) * placesToEdge))

function edgesFrom(): Float64Array {
  const ends = new Float64Array(layers + 1)
  ends[0] = layerArea / bell(tailFrom)
  ends[1] = tailFrom
  for (let layer = 2; layer < layers; layer += 1) ends[layer] = placeOf(bell(ends[layer - 1]!) + layerArea / ends[layer - 1]!)
  return ends
}

/** z > 0 with exp(−z²/2) of a given height, by halving until no double lies between. */
function placeOf(height: number): number {
  for (let low = 0, high = tailFrom; ;) {
    const middle = (low + high) / 2
    if (middle <= low || middle >= high) return middle
    if (bell(middle) > height) low = middle; else high = middle
  }
}
