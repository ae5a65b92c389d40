import type { CheckTool, Took } from '#model/check.ts'
import type { CheckForm } from '#model/check-draft.ts'
import type { InstrumentIs, InstrumentRecord } from '#model/instrument-record.ts'
import { steelApartPerC, steelPerC } from '#engine/inspect/check-uncertainty.ts'
import type { InspectFacts } from '#engine/inspect/inspect-facts.ts'

/** °C. Bar and block, or bar and micrometer, that lay side by side differ by no more. Common practice, no source. */
export const betweenCommonC = 0.5
/** °C. The plate and all that is on it are told against this. @source ISO-1 */
const referenceC = 20

/** What of a form matters for what was taken. */
type Taken = Pick<CheckForm, 'method' | 'instrumentId' | 'plateId' | 'blocksId' | 'zeroOn' | 'zeroBar'>

/**
 * Instrument, plate and blocks of a check with the figures they have today, so that a record edited later does not change
 * what was proved. A figure nobody knows is null and leaves its part out; `checkedOf` says which.
 *
 * @param zeroMm        height of the block, which its limit goes by; null: none
 * @param temperatureC  at the plate; null: not told
 * @returns             null without an instrument: no uncertainty can be told then
 */
export function tookFrom(form: Taken, zeroMm: number | null, temperatureC: number | null, { instruments, heights, tables }: InspectFacts): Took | null {
  const find = (id: string | null): InstrumentRecord | null => instruments.find((one) => one.id === id) ?? null
  const instrument = find(form.instrumentId), onPlate = form.method === 'compare' || form.method === 'turn-over'
  const gauge = figuresOf(instrument, 'indicator') ?? figuresOf(instrument, 'micrometer')
  if (!gauge) return null
  const plate = onPlate ? find(form.plateId) : null, blocks = onPlate && form.zeroOn === 'block' ? find(form.blocksId) : null
  const flat = figuresOf(plate, 'plate'), block = figuresOf(blocks, 'gauge blocks')
  const { grade = null, lengthMm = null, widthMm = null } = flat ?? {}
  return {
    instrument: toolOf(instrument), plate: toolOf(plate), blocks: toolOf(blocks),
    readWith: {
      method: onPlate ? 'compare' : 'micrometer',
      resolutionUm: gauge.resolutionUm, limitUm: gauge.limitUm, repeatabilityUm: gauge.repeatabilityUm,
      plateFlatnessUm: flat?.flatnessUm ?? (grade === null || lengthMm === null || widthMm === null ? null : tables.plateFlatnessUm(grade, lengthMm, widthMm)),
      blockLimitUm: block ? block.limitUm ?? (block.grade === null || zeroMm === null ? null : tables.blockLimitUm(block.grade, zeroMm)) : null,
      blockUUm: block ? block.uUm : onPlate && form.zeroOn === 'bar' && form.zeroBar !== null ? heights(form.zeroBar)?.uUm ?? null : null,
      betweenC: betweenCommonC, awayC: temperatureC === null ? null : Math.abs(temperatureC - referenceC),
      expansionPerC: steelPerC, expansionApartPerC: steelApartPerC,
    },
  }
}

type FiguresOf<Is extends InstrumentIs['is']> = Extract<InstrumentIs, { is: Is }>

const figuresOf = <Is extends InstrumentIs['is']>(record: InstrumentRecord | null, is: Is): FiguresOf<Is> | null =>
  record?.figures.is === is ? (record.figures as FiguresOf<Is>) : null

const toolOf = (record: InstrumentRecord | null): CheckTool | null => record && { id: record.id, name: record.name, dueOn: record.dueOn }
