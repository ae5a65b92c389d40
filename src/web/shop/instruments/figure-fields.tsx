import { wordLength, wordNumber } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { blockGrades } from '#reference/instruments/gauge-blocks.ts'
import { namedGrades } from '#reference/plates/named-grade.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { LengthField } from '#web/parts/length-field.tsx'
import { NumberField } from '#web/parts/number-field.tsx'
import { SelectField } from '#web/parts/select-field.tsx'
import { bookFigures, type BookFigures } from '#web/shop/instruments/book-figures.ts'
import { type InstrumentTexts, type InstrumentWrong, readInstrument } from '#web/shop/instruments/instrument-texts.ts'
import { sayBlocks, sayFigureSource, sayFlatness } from '#web/shop/instruments/say-instrument.ts'
import { useUnits } from '#web/units.ts'

type Props = { readonly texts: InstrumentTexts; readonly put: (part: Partial<InstrumentTexts>) => void; readonly wrong: InstrumentWrong }

/** The figures of an instrument of its kind, below each where it is from; a book's are taken over at one touch. */
export function FigureFields(props: Props) {
  switch (props.texts.is) {
    case 'indicator': case 'micrometer': return <ReadingFigures {...props} />
    case 'gauge blocks': return <BlockFigures {...props} />
    case 'plate': return <PlateFigures {...props} />
  }
}

function ReadingFigures({ texts, put, wrong }: Props) {
  const units = useUnits(), { is } = texts
  const figures = readingFigures(texts, units)
  const um = (figure: 'resolutionUm' | 'limitUm' | 'repeatabilityUm') => { const refusal = wrong[figure]; return refusal ? sayRefusal(refusal, units) : null }
  return (
    <>
      <div className="field-list book">
        {bookFigures[is].map(({ label, rows }) => (
          <SelectField
            key={label} label={label} value="" onChange={(at) => put(textsFrom(rows[Number(at)]!, units))}
            options={[{ value: '', label: 'take over …' }, ...rows.map((row, at) => ({ value: String(at), label: sayRow(row, units) }))]}
          />
        ))}
      </div>
      <div className="field-list">
        {is === 'micrometer' ? (
          <>
            <LengthField label="range from" value={texts.from} onChange={(from) => put({ from })} refused={wrong.rangeFromMm} />
            <LengthField label="range to" value={texts.to} onChange={(to) => put({ to })} refused={wrong.rangeToMm} />
          </>
        ) : null}
        <NumberField label="reads to, µm" value={texts.resolution} onChange={(resolution) => put({ resolution })} error={um('resolutionUm')} note={texts.resolution === '' ? null : 'the smallest step that is read'} />
        <NumberField label="permissible error ±, µm" value={texts.limit} ifEmpty="not known" onChange={(limit) => put({ limit })} error={um('limitUm')} note={figures && sayFigureSource(is, 'limitUm', figures)} />
        <NumberField label="repeatability, µm" value={texts.repeatability} ifEmpty="from the repeats" onChange={(repeatability) => put({ repeatability })} error={um('repeatabilityUm')} note={figures && sayFigureSource(is, 'repeatabilityUm', figures)} />
      </div>
    </>
  )
}

function BlockFigures({ texts, put, wrong }: Props) {
  const units = useUnits()
  return (
    <div className="field-list">
      <SelectField label="grade" value={texts.grade} onChange={(grade) => put({ grade })} note={sayBlocks(texts.grade, units)} options={[{ value: '', label: 'none' }, ...blockGrades.map((grade) => ({ value: grade, label: grade }))]} />
      <NumberField label="by certificate, u, µm" more="standard uncertainty of the blocks" value={texts.u} ifEmpty="none" onChange={(u) => put({ u })} error={wrong.uUm ? sayRefusal(wrong.uUm, units) : null} note={texts.u === '' ? 'counts instead of the grade' : 'the shop’s own; counts instead of the grade'} />
      <NumberField label="limit ±, µm" value={texts.limit} ifEmpty="by the grade" onChange={(limit) => put({ limit })} error={wrong.limitUm ? sayRefusal(wrong.limitUm, units) : null} note={texts.limit === '' ? null : 'the shop’s own'} />
    </div>
  )
}

function PlateFigures({ texts, put, wrong }: Props) {
  const units = useUnits()
  const read = readInstrument({ ...texts, name: 'plate' }, null, units), size = 'values' in read && read.values.figures.is === 'plate' ? read.values.figures : null
  const byGrade = texts.grade === '' ? null : sayFlatness(texts.grade, size?.lengthMm ?? null, size?.widthMm ?? null, units)
  return (
    <div className="field-list">
      <LengthField label="length of the plate" value={texts.length} onChange={(length) => put({ length })} refused={wrong.lengthMm} />
      <LengthField label="width of the plate" value={texts.width} onChange={(width) => put({ width })} refused={wrong.widthMm} />
      <SelectField
        label="rule and grade" value={texts.grade} onChange={(grade) => put({ grade })} note={texts.grade === '' ? 'the rules differ, so the rule is part of the grade' : byGrade ?? 'type length and width'}
        options={[{ value: '', label: 'none' }, ...namedGrades.map((grade) => ({ value: grade, label: grade }))]}
      />
      <NumberField
        label="by certificate, µm" more="flatness of the plate" value={texts.flatness} ifEmpty={byGrade === null ? 'not known' : 'by the grade'} onChange={(flatness) => put({ flatness })}
        error={wrong.flatnessUm ? sayRefusal(wrong.flatnessUm, units) : null} note={texts.flatness === '' ? null : 'the shop’s own; counts instead of the grade'}
      />
    </div>
  )
}

/** The figures as far as they can be read while they are typed. */
function readingFigures(texts: InstrumentTexts, units: Units) {
  const read = readInstrument({ ...texts, name: 'instrument' }, null, units)
  return 'values' in read ? read.values.figures as Parameters<typeof sayFigureSource>[2] : null
}

/** What a book has goes into the fields; what it leaves open stays as it was typed. */
function textsFrom(row: BookFigures, units: Units): Partial<InstrumentTexts> {
  const um = (value: number | undefined) => (value === undefined ? null : wordNumber(value, units.decimalMark, null, 4))
  const texts = { resolution: um(row.resolutionUm), limit: um(row.limitUm), repeatability: um(row.repeatabilityUm), from: row.fromMm === undefined ? null : `${row.fromMm} mm`, to: row.toMm === undefined ? null : `${row.toMm} mm` }
  return Object.fromEntries(Object.entries(texts).filter(([, text]) => text !== null))
}

function sayRow({ name, limitUm, repeatabilityUm, cited, fromMm, toMm }: BookFigures, units: Units): string {
  const um = (value: number) => `${wordNumber(value, units.decimalMark)} µm`
  const range = fromMm === undefined || toMm === undefined ? name : `${fromMm === 0 ? '0' : wordLength(fromMm, units)} to ${wordLength(toMm, units)}`
  const source = cited.limitUm ?? cited.repeatabilityUm
  return `${range}${limitUm === undefined ? '' : `: ± ${um(limitUm)}`}${repeatabilityUm === undefined ? '' : `, repeats ${um(repeatabilityUm)}`} (${source?.source ?? ''})`
}
