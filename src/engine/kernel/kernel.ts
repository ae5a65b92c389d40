import { code } from '#engine/kernel/code.ts'
import { Refusal } from '#model/refusal.ts'

/**
 * The inner loops of a prediction, compiled from kernel/, and the memory that they work on. Lists are told by where they
 * begin in it, in bytes; what each loop does stands at its source.
 */
export type Kernel = {
  readonly memory: Memory
  readonly makeNormalTables: (tables: number) => void
  readonly drawNormals: (state: number, tables: number, list: number, bytes: number) => void
  readonly mixTwo: (mixes: number, places: number, into: number, step: number, pairs: number) => void
  readonly mixMore: (into: number, step: number, pairs: number, draws: number, factor: number) => void
  readonly raise: (into: number, step: number, pairs: number, other: number) => void
  readonly settle: (
    heights: number, row: number, xs: number, split: number, places: number, weightOne: number, weightTwo: number, loadXMm: number, perApart: number,
    pairs: number, brackets: number, open: number, along: number, across: number,
  ) => void
  readonly tally: (values: number, count: number, from: number, perUnit: number, half: number, binOf: number, counts: number, sums: number) => void
  readonly gather: (values: number, count: number, binOf: number, wanted: number) => number
  readonly countWithin: (values: number, count: number, limit: number) => number
  readonly tilts: (along: number, length: number, across: number, width: number, sizes: number, pairs: number) => void
}

type Memory = { readonly buffer: ArrayBuffer; readonly grow: (pages: number) => number }
/** What a machine has of WebAssembly; the types of the pure rooms know no machine. */
type WebAssembly = {
  readonly validate: (bytes: Uint8Array) => boolean
  readonly Memory: new (size: { readonly initial: number }) => Memory
  readonly Module: new (bytes: Uint8Array) => object
  readonly Instance: new (module: object, imports: { readonly env: { readonly memory: Memory } }) => { readonly exports: Omit<Kernel, 'memory'> }
}

const pageBytes = 65_536
/** More than this is not kept for the next piece of work. */
const mostKeptBytes = 64 * 2 ** 20

const idle: Kernel[] = []
let compiled: { readonly wasm: WebAssembly; readonly module: object } | null = null

/**
 * The loops with at least so much memory, whose contents may be anything, for one piece of work until it is put back.
 *
 * @throws Refusal `no-vector-instructions` on a machine without WebAssembly, or without its vector instructions
 */
export function takeKernel(bytes: number): Kernel {
  const kernel = idle.pop() ?? newKernel(), missing = bytes - kernel.memory.buffer.byteLength
  if (missing > 0) kernel.memory.grow(Math.ceil(missing / pageBytes))
  return kernel
}

/** Lists in the memory of a kernel that was put back are no longer one's own. */
export function putBack(kernel: Kernel): void {
  if (kernel.memory.buffer.byteLength <= mostKeptBytes) idle.push(kernel)
}

function newKernel(): Kernel {
  const { wasm, module } = compiled ??= compile(), memory = new wasm.Memory({ initial: 1 })
  return { ...new wasm.Instance(module, { env: { memory } }).exports, memory }
}

function compile(): NonNullable<typeof compiled> {
  const { WebAssembly: wasm } = globalThis as unknown as { readonly WebAssembly?: WebAssembly }, bytes = Uint8Array.from(code.join('').match(/../g)!, (byte) => parseInt(byte, 16))
  if (wasm === undefined || !wasm.validate(bytes)) throw new Refusal('no-vector-instructions')
  return { wasm, module: new wasm.Module(bytes) }
}
