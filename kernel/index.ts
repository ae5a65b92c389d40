// All of the memory is the caller's, from its first byte on: nothing here keeps data of its own (no texts, no lists, no objects).
export { drawNormals, makeNormalTables } from './normals'
export { mixMore, mixTwo, raise } from './mix'
export { settle } from './settle'
export { countWithin, gather, tally } from './tally'
export { tilts } from './tilts'
