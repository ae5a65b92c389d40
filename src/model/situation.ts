/**
 * What is about to be done, as far as it bears on what can hurt someone, in the order in which the work goes.
 *
 * `loose bar`: a bar that nothing but the part holds. `drill bar`: a drill will cut into it. `rod`: between the moving jaw and
 * a raw side. `straps`: on a machine table, without a vise. Making comes first: from `sawing` to `stoning`; then the surface plate.
 */
export const situations = [
  'sawing', 'milling bars', 'rubbing', 'sharp edges', 'furnace', 'quench', 'untempered', 'straightening', 'hard milling', 'grinding wheel', 'grinding thin bars', 'stoning', 'at the plate',
  'look first', 'seating', 'stack', 'single bar', 'round part', 'step jaw', 'rod', 'straps', 'magnetic chuck', 'thin grip', 'loose bar', 'handle off the vise',
  'milling over bars', 'drilling through', 'drill bar',
] as const
export type Situation = (typeof situations)[number]
