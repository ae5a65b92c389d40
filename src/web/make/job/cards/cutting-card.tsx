import { useMemo } from 'react'
import { answerCutting } from '#engine/make/cutting/answer-cutting.ts'
import { cuttingCase } from '#engine/make/job/card-cases.ts'
import { attempt } from '#model/attempt.ts'
import { wordLength, wordNumber } from '#model/length.ts'
import { cuttingBooks } from '#reference/cutting/cutting-books.ts'
import { cardJobOf } from '#web/make/job/cards/card-job.ts'
import { Computed } from '#web/make/job/cards/computed.tsx'
import { ToolField } from '#web/make/job/cards/tool-field.tsx'
import type { StepProps } from '#web/make/job/step-card.tsx'
import { typeTool } from '#web/make/job-edits.ts'
import { SelectField } from '#web/parts/select-field.tsx'
import { useUnits } from '#web/units.ts'

const passWords = { rough: 'roughing, conventional', finish: 'finishing, conventional', spring: 'spring pass, climb' } as const

/** Speed, feed and passes of a milling step, from the steel of the stock, the mill of the shop and the cutter. */
export function CuttingCard({ job, view, step }: StepProps) {
  const units = useUnits(), number = (value: number, most = 0) => wordNumber(value, units.decimalMark, null, most)
  const answer = useMemo(() => attempt(() => { const asked = cuttingCase(cardJobOf(job, view), step.kind); return asked && answerCutting(asked, cuttingBooks) }), [job, view, step.kind])
  return (
    <Computed
      title="Cutting" answer={answer}
      fields={(
        <>
          <ToolField job={job} field="cutting.diameter" label="diameter of the cutter" refused={answer} />
          <ToolField job={job} field="cutting.teeth" label="teeth" refused={answer} />
          <SelectField label="made of" value={job.tools['cutting.material'] ?? 'carbide'} onChange={(text) => typeTool(job.id, 'cutting.material', text)} options={['carbide', 'HSS'].map((value) => ({ value, label: value }))} />
          <ToolField job={job} field="cutting.stickOut" label="stick-out" ifEmpty="clears the bars" refused={answer} />
          <ToolField job={job} field="cutting.depth" label="depth along the cutter" ifEmpty="both bars" refused={answer} />
          <ToolField job={job} field="cutting.rpm" label="spindle speed, 1/min" ifEmpty="by the book" refused={answer} />
          <ToolField job={job} field="cutting.feed" label="feed per tooth" ifEmpty="by the book" refused={answer} />
        </>
      )}
    >
      {({ rpm, feedMmPerMin, speedMPerMin, passes, wall, minutes, motorKw }) => (
        <>
          <dl className="mk-figures">
            <div><dt>1/min</dt><dd>{number(rpm)}</dd></div>
            <div><dt>feed, {units.length}/min</dt><dd>{wordLength(feedMmPerMin, units, { decimals: units.length === 'mm' ? 0 : 1 })}</dd></div>
            <div><dt>m/min</dt><dd>{number(speedMPerMin, 1)}</dd></div>
            <div><dt>min a side</dt><dd>{number(minutes, 1)}</dd></div>
            <div><dt>motor, kW</dt><dd>{number(motorKw, 2)}</dd></div>
          </dl>
          <div className="mk-wide">
            <table>
              <caption>Passes of one side</caption>
              <thead><tr><th scope="col">pass</th><th scope="col">width, {units.length}</th><th scope="col">chip, {units.length}</th><th scope="col">force, N</th><th scope="col">bends, µm</th></tr></thead>
              <tbody>{passes.map(({ kind, facesMm, chip, forceN, deflection }, at) => (
                <tr key={at}><th scope="row">{passWords[kind]}</th><td>{wordLength(facesMm, units, { fractions: false })}</td><td>{wordLength(chip.maxMm, units, { fractions: false })}</td><td>{number(forceN)}</td><td>{number(deflection.tipUm, 1)}</td></tr>
              ))}</tbody>
            </table>
          </div>
          <p>The bending of the cutter leaves {number(wall.finishUm, 1)} µm on the wall after finishing{wall.springUm === null ? '' : `, ${number(wall.springUm, 1)} µm after the spring pass`}, and it leans by {number(wall.taperUm, 1)} µm over the depth.</p>
        </>
      )}
    </Computed>
  )
}
