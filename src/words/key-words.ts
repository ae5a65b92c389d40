import type { Terms } from '#words/terms.ts'

type Word = string | ((terms: Terms) => string)

/**
 * What the names of sizes and wishes are called, in calculations (`depthMm`), on the form (`depth`) and in sums alike.
 * Keys are without the unit at their end, unless the same one with another unit is something else.
 */
const words: { readonly [key: string]: Word } = {
  // vise
  jawHeight: 'jaw height', lowerJawHeight: 'height of the lower jaw', jawWidth: 'jaw width', opening: 'opening',
  fixedHeight: 'height of the fixed jaw', movingHeight: (t) => `height of the ${t.movingJaw}`, stepHeight: 'height of the step',
  jawSets: 'jaw sets', fittedJawSetId: 'fitted jaw set', face: 'jaw face',
  // part
  betweenJaws: 'between jaws', between: 'between jaws', alongJaws: 'along jaws', along: 'along jaws', height: 'height',
  diameter: 'diameter', shape: 'shape', hollows: 'hollows', offTop: 'off the top', proud: 'stand proud of the jaws',
  // cuts
  cuts: 'cuts', holes: 'holes', kind: 'kind', depth: 'depth', overJaw: 'passes over a jaw', runThrough: 'run-through', rect: 'place in the plan',
  x: 'distance along', y: 'distance from the fixed jaw', across: 'distance from the jaw', from: 'jaw it is measured from', tool: 'tool',
  through: 'through', pointAngle: 'point angle', pitch: 'pitch', leadThreads: 'threads of lead', side: 'side', stock: 'stock to take off',
  x0: 'left side', x1: 'right side', y0: 'side toward the fixed jaw', y1: (t) => `side toward the ${t.movingJaw}`,
  // wishes
  grip: 'grip', air: 'clear of the jaws', holeAir: 'air between hole and bar', bedAir: 'air above the bed', gap: 'gap between the bars',
  gripLine: 'jaw above the line of contact', carry: 'length carried', stickOutPerGrip: 'stick-out for each grip',
  stickOutPerThickness: 'stick-out for each part width', stackRatio: 'height for each thickness in a stack', tolerance: 'tolerance', use: 'use', match: 'match of the bars',
  ways: 'ways of resting the part', most: 'choices to answer', rejectedMost: 'rejections to answer', only: 'bars to look at', seat: 'seat height',
  // bars
  bars: 'bars', id: 'id', thickness: 'thickness', length: 'length', mates: 'mates', trust: 'trust', standing: 'standing of the height',
  thicknessStanding: 'standing of the thickness', where: 'whereabouts', heights: 'heights', name: 'name', slot: 'slot', note: 'note',
  code: 'code', matesId: 'mates', slotId: 'slot', whereWho: 'who has it',
  // row, paper test, table, chuck, fillers, many operations, four readings, six-side block
  vises: (t) => `${t.vise}s`, pairs: 'pairs', mean: 'mean height', bed: 'height of the bed', oneZ: 'one Z for all', longBar: 'long bar', apart: 'distance of the two', strip: 'thickness of the strip', strips: 'strips',
  clamped: 'jaws closed', topOut: 'top indicates out', 'fixed-left': 'fixed jaw, left', 'fixed-right': 'fixed jaw, right',
  'moving-left': (t) => `${t.movingJaw}, left`, 'moving-right': (t) => `${t.movingJaw}, right`,
  partAcross: 'across', partAlong: 'along', nearEdge: 'from near edge', leftEnd: 'from left end', inFromEdge: 'in from the edge', turned: 'lies across', straps: 'straps', travel: 'travel of the table', target: 'gap to fill', sizes: 'sizes', size: 'size', windows: 'windows',
  low: 'lowest height', high: 'highest height', y1Um: 'reading as it is', y2Um: 'reading with the bars exchanged', y3Um: 'reading with the block turned',
  y4Um: 'reading when tightened', uUm: 'uncertainty of a reading', over: 'distance between the readings', raw: 'raw block', finish: 'finished block', width: 'width', rod: 'diameter of the rod',
  // what is missing, regrinding, straightening
  step: 'step', lowest: 'lowest height', owned: 'owned heights', stacks: 'two on each other', effortMillions: 'work', setups: 'setups', times: 'times', next: 'what one could get',
  advisedOnly: 'advised heights only', stages: 'stages', infeed: 'infeed', takes: 'what the stage takes', faces: 'faces', sparkOut: 'spark-out', cleanUp: 'clean-up',
  span: 'span', eMPa: 'elastic modulus', yieldMPa: 'yield stress', wantedSet: 'wanted set',
  // cut lists
  capacity: 'stock length', items: 'pieces', pieces: 'pieces', plateWidth: 'width of the plate', available: 'how many there are', secondsMost: 'seconds',
  // instruments
  resolution: 'resolution', limit: 'permissible error', repeatability: 'repeatability', rangeFrom: 'begin of the range', rangeTo: 'end of the range', grade: 'grade',
  flatness: 'flatness', dueOn: 'due date', figures: 'what it is',
  // making: furnace
  hrc: 'hardness', measuredHrc: 'hardness read', steel: 'steel', table: 'table', stressRelief: 'stress relief', tempering: 'tempering rows', tempers: 'number of tempers', austenitiseC: 'hardening temperature',
  soakMin: 'minutes at heat', soakMinPer25: 'minutes at heat for each 25 mm', temperMinPer25: 'minutes of the temper for each 25 mm', temperLeastMin: 'least minutes of the temper',
  // making
  order: 'order', route: 'route', lengths: 'stock lengths', plates: 'stock plates', steels: 'steels', machines: 'machines', condition: 'condition', price: 'price',
  fromMm: 'lowest height', toMm: 'highest height', below: 'below the jaw', under: 'under the width of the jaws', dueDay: 'day it is wanted', measured: 'measured stock', mm: 'measured size', dimension: 'size measured', stockLimits: 'limits of delivery',
  hardening: 'hardening', bought: 'bought ones', cost: 'cost', days: 'days', handPerHour: 'a person\'s hour', perHour: 'machine hour', hoursPerDay: 'hours a day', cutterCost: 'cutter', limitsUm: 'limits of the uses', experience: 'the shop\'s own results', leave: 'stock to leave',
  infeeds: 'infeeds', daysLeft: 'days left', actuals: 'what was done', done: 'steps done', hours: 'hours', values: 'values read', count: 'how many', kerf: 'kerf', sawnFace: 'sawn face', longest: 'longest bar', takesMm: 'what it takes', carbonPercent: 'carbon',
  growthFromPercent: 'least growth', growthToPercent: 'most growth', hrcFrom: 'least hardness', hrcTo: 'most hardness',
  // making: cutter and machine
  state: 'state of the steel', group: 'group of the steel', kc11MPa: 'specific force', mc: 'exponent', cutter: 'cutter', teeth: 'teeth', material: 'material', helix: 'helix', machine: 'machine', rough: 'widest roughing pass',
  springPass: 'spring pass', overrun: 'overrun', stickOut: 'stick-out', speedMPerMin: 'cutting speed', rpm: 'spindle speed', feedPerTooth: 'feed per tooth', leastRpm: 'lowest speed', mostRpm: 'highest speed', speedsRpm: 'speeds', powerKw: 'power', efficiency: 'efficiency',
  mostFeedMmPerMin: 'fastest feed',
  // clamp
  clamp: 'clamp', forceN: 'force', torqueNm: 'torque', lead: 'lead of the screw', milling: 'milling', drilling: 'drilling', feed: 'feed a turn', kd: 'material factor', wear: 'wear',
  // making: grinder
  sides: 'sides', bow: 'bow', skin: 'skin without carbon', growthPercent: 'growth', allowance: 'what is there to grind', work: 'work', hardened: 'hardened', wheel: 'wheel', crossfeed: 'crossfeed', tableMPerMin: 'speed of the table', markedRpm: 'speed marked on the wheel',
  // shop, checks, changes
  reading: 'reading', zero: 'zero', closing: 'zero at the end', temperature: 'temperature', zeroBar: 'bar of the zero', places: 'places of the stations', feeler: 'feeler',
  unit: 'unit', units: 'units', paper: 'paper', readings: 'readings', station: 'station', text: 'reading as typed', method: 'method', person: 'person',
  device: 'device', at: 'time', viseId: (t) => t.vise, partId: 'part', form: 'form', title: 'title', operation: 'operation', csv: 'file', dryRun: 'dry run',
  initials: 'initials', record: 'record', field: 'field', fields: 'fields', vise: (t) => t.vise, part: 'part', wishes: 'wishes', rack: 'rack',
  port: 'port', data: 'data folder', what: 'what was told', setupId: 'setup', replaces: 'check it replaces', undoes: 'event it undoes', bar: 'bar',
}

/** The name of a size or wish as said to a person; null for a key nobody has named. */
export function keyWord(key: string, terms: Terms): string | null {
  const word = Object.hasOwn(words, key) ? words[key]! : Object.hasOwn(words, bare(key)) ? words[bare(key)]! : null
  return typeof word === 'function' ? word(terms) : word
}

/** The key without the unit at its end. */
function bare(key: string): string {
  return key.replace(/(Mm|Um|Deg|Iso)$/, '')
}
