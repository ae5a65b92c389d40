export { drawNormals, makeNormalTables } from './normals'
export { mixMore, mixTwo, raise } from './mix'
export { settle } from './settle'
export { countWithin, gather, tally, tilts } from './tally'
