import type { Sum } from '#model/sum.ts'
import type { SumWords } from '#words/say-sum.ts'

/** The sums of a check: shape, pair, verdict, uncertainty, mates, line. */
export const inspectSums: { readonly [formula: string]: SumWords } = {
  'mean-height': { title: 'Height', says: '{zeroMm} + {meanReadingUm}' },
  'parallelism': { title: 'Parallelism', says: '{highestUm} − {lowestUm}' },
  'taper': { title: 'Taper over the length', says: '{slopeUmPerMm} × {lengthMm}' },
  'crown': { title: 'Crown or hollow', says: '{middleUm} − {chordUm}' },
  'twist': { title: 'Twist over the length', says: '{slopeUmPerMm} × {lengthMm}' },
  'range-bias': { title: 'Range a perfect bar would show', says: '{meanRange} × {noiseUm}' },
  'mean-difference': { title: 'Mean difference of the mates', says: '{secondUm} − {firstUm}' },
  'bow': { title: 'Bend', says: '({faceADepartureUm} − {faceBDepartureUm}) / 2' },
  'height-crown': { title: 'Crown or hollow of the height', says: '{faceADepartureUm} + {faceBDepartureUm}' },
  'guard': { title: 'Guard band', says: '{guardFactor} × {uUm}' },
  'accept-from': { title: 'Proved from', says: '{lowerUm} + {guardUm}' },
  'accept-to': { title: 'Proved up to', says: '{upperUm} − {guardUm}' },
  'chance-to-conform': { title: 'Chance to keep the limits', says: ({ lowerUm, upperUm }) => [
    typeof upperUm === 'number' ? 'Φ(({upperUm} − {valueUm}) / {uUm})' : '1', ...(typeof lowerUm === 'number' ? ['Φ(({lowerUm} − {valueUm}) / {uUm})'] : []),
  ].join(' − ') },
  'proved-to': { title: 'Proved to', says: '{valueUm} + {guardFactor} × {uUm}' },
  'budget-u': { title: 'Standard uncertainty', says: (inputs) => `root of the sum of the squares of ${listed(inputs)}` },
  'effective-dof': { title: 'Effective degrees of freedom', says: 'fourth power of {u} by those of its parts over theirs' },
  'coverage-factor': { title: 'Coverage factor', says: 'Student factor for {coverage} and {dof}' },
  'expanded-u': { title: 'Expanded uncertainty', says: '{k} × {u}' },
  'least-squares': { title: 'What is left over, squared', says: 'least for {readings} readings and degree {degree}' },
  'residual-sd': { title: 'Scatter about the line', says: 'root of {residualSumOfSquares} / {dof}' },
  'line-at': { title: 'The line there', says: 'at {x}, uncertain by {u}' },
  'mates-worst': { title: 'Worst pair', says: 'least for {pairs} pairs; with a smaller one there are {pairsBelow}' },
  'mates-spread': { title: 'Spread', says: '{highest} − {lowest}' },
}

/** Parts by their own names, as they come in any budget. */
const listed = (inputs: Sum['inputs']): string => Object.keys(inputs).join(', ')
