import { drawUnit, drawWord } from './generator'

/** Where the lowest layer ends and the tail begins, and the area of every layer. @source ZIGGURAT */
const tailFrom: f64 = 3.6541528853610088, layerArea: f64 = 0.004928673233974655
const layers = 256, placesToEdge: f64 = 8_388_608

/**
 * The tables, in bytes from where they begin. `edges`: right ends of the layers from the lowest, which is as wide as its
 * area asks; the top one ends at 0. `heights` of the curve there, 0 for the lowest. `widths` of a place in each layer.
 * `sure`: places of a layer nearer to 0 than this many lie under the curve whatever their height.
 */
const widths: usize = 0, edges: usize = widths + 8 * layers, heights: usize = edges + 8 * (layers + 1), sure: usize = heights + 8 * (layers + 1)

/** Makes the tables that `drawNormals` looks up. */
export function makeNormalTables(tables: usize): void {
  setEdge(tables, 0, layerArea / bell(tailFrom), 0)
  setEdge(tables, 1, tailFrom, bell(tailFrom))
  for (let layer = 2; layer < layers; layer += 1) {
    const below = edgeOf(tables, layer - 1), edge = placeOf(bell(below) + layerArea / below)
    setEdge(tables, layer, edge, bell(edge))
  }
  setEdge(tables, layers, 0, 1)
  for (let layer = 0; layer < layers; layer += 1) {
    store<f64>(tables + widths + (<usize>layer << 3), edgeOf(tables, layer) / placesToEdge)
    store<i32>(tables + sure + (<usize>layer << 2), <i32>((edgeOf(tables, layer + 1) / edgeOf(tables, layer)) * placesToEdge))
  }
}

function setEdge(tables: usize, layer: i32, edge: f64, height: f64): void {
  store<f64>(tables + edges + (<usize>layer << 3), edge)
  store<f64>(tables + heights + (<usize>layer << 3), height)
}

function edgeOf(tables: usize, layer: i32): f64 { return load<f64>(tables + edges + (<usize>layer << 3)) }
function heightOf(tables: usize, layer: i32): f64 { return load<f64>(tables + heights + (<usize>layer << 3)) }

/** z > 0 with exp(−z²/2) of a given height, by halving until no double lies between. */
function placeOf(height: f64): f64 {
  let low: f64 = 0, high = tailFrom
  while (true) {
    const middle = (low + high) / 2
    if (middle <= low || middle >= high) return middle
    if (bell(middle) > height) low = middle; else high = middle
  }
}

/** exp(−z²/2) for z up to 4, from + − × ÷ alone: a short series of the 256th part, squared eight times. */
function bell(z: f64): f64 {
  const part = (-0.5 * z * z) / 256
  let power: f64 = 1
  for (let k = 8; k > 0; k -= 1) power = 1 + (part * power) / <f64>k
  for (let k = 0; k < 8; k += 1) power *= power
  return power
}

/**
 * Fills a list of so many bytes with independent standard normal values (ziggurat, one word of xoshiro128** for most values).
 * A word gives layer and place apart, 8 and 24 bits, so values lie on a raster of at most 4.4e-7.
 *
 * @param state  four words
 * @source ZIGGURAT XOSHIRO
 */
export function drawNormals(state: usize, tables: usize, list: usize, bytes: usize): void {
  for (let at = list, end = list + bytes; at < end; at += 8) {
    at = drawSure(state, tables, at, end)
    if (at < end) store<f64>(at, drawFrom(state, tables, load<i32>(at)))
  }
}

/** Fills a list as long as a word is all it takes. Gives the address of the value where it is not, with the word left there; the end where there is none. */
function drawSure(state: usize, tables: usize, from: usize, end: usize): usize {
  // the steps of drawWord, written out so that the state stays in registers
  let s0 = load<u32>(state), s1 = load<u32>(state, 4), s2 = load<u32>(state, 8), s3 = load<u32>(state, 12), at = from
  for (; at < end; at += 8) {
    const word = rotl<u32>(s1 * 5, 7) * 9, shifted = s1 << 9
    s2 ^= s0; s3 ^= s1; s1 ^= s2; s0 ^= s3; s2 ^= shifted
    s3 = rotl<u32>(s3, 11)
    const layer = word & 255, place = <i32>word >> 8
    // abs, not a branch: the sign of a random value cannot be foreseen
    if (abs<i32>(place) >= load<i32>(tables + sure + (layer << 2))) { store<u32>(at, word); break }
    store<f64>(at, <f64>place * load<f64>(tables + widths + (layer << 3)))
  }
  store<u32>(state, s0); store<u32>(state, s1, 4); store<u32>(state, s2, 8); store<u32>(state, s3, 12)
  return at
}

/** A normal value from a word just drawn and as many more as it takes. */
function drawFrom(state: usize, tables: usize, word: i32): f64 {
  let next = word
  while (true) {
    const layer = next & 255, z = <f64>(next >> 8) * load<f64>(tables + widths + (<usize>layer << 3)), size = abs<f64>(z)
    if (size < edgeOf(tables, layer + 1)) return z
    if (layer === 0) return z < 0 ? -drawTail(state) : drawTail(state)
    const low = heightOf(tables, layer), high = heightOf(tables, layer + 1), edge = edgeOf(tables, layer), wide = edge - edgeOf(tables, layer + 1)
    // nowhere is the curve further from its chord than an eighth of the square of the width: mostly the chord alone decides
    const share = drawUnit(state), aboveChord = (high - low) * (share * wide - (edge - size)), far = (wide * wide * wide) / 8
    if (abs<f64>(aboveChord) > far ? aboveChord < 0 : low + (high - low) * share < bell(size)) return z
    next = <i32>drawWord(state)
  }
}

/** Beyond the last edge. @source ZIGGURAT */
function drawTail(state: usize): f64 {
  while (true) {
    const beyond = drawExponential(state) / tailFrom
    if (2 * drawExponential(state) > beyond * beyond) return tailFrom + beyond
  }
}

/** An exponential value by comparisons alone: the run of falling draws is of odd length with chance e^−u. @source AMS-12 */
function drawExponential(state: usize): f64 {
  let whole: f64 = 0
  while (true) {
    const first = drawUnit(state)
    let odd = true
    for (let last = first, next = drawUnit(state); next < last; last = next, next = drawUnit(state)) odd = !odd
    if (odd) return whole + first
    whole += 1
  }
}
