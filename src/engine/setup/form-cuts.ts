import { readLengthMm, readNumber, type LengthUnit } from '#model/length.ts'
import type { Cut } from '#model/cut.ts'
import type { Rect } from '#model/part.ts'
import { Refusal } from '#model/refusal.ts'
import type { CutForm, HoleForm, SetupForm } from '#model/setup-form.ts'
import { formDefaults, typedMm } from '#engine/setup/form-wishes.ts'
import { commonLeadThreads, commonPointDeg } from '#engine/setup/read-cut.ts'

/** One line of *cuts*. `field` is its path on the form. @throws Refusal of `readLengthMm` and `readNumber` */
export function cutFrom(line: CutForm, field: string, unit: LengthUnit, betweenJawsMm: number | null): Cut {
  const length = (name: string, text: string) => readLengthMm(text, unit, `${field}.${name}`)
  switch (line.kind) {
    case 'hole':
      return holeFrom(line, field, unit, betweenJawsMm)
    case 'end':
      return { kind: 'end', side: line.side, stockMm: length('stock', line.stock) }
    case 'step':
    case 'slot':
      return {
        kind: line.kind,
        depthMm: length('depth', line.depth),
        overJaw: line.overJaw,
        runThroughMm: typedMm(line.runThrough, unit, `${field}.runThrough`) ?? formDefaults[unit].milledRunThroughMm,
        ...(line.rect === null ? {} : { rect: rectFrom(line.rect, `${field}.rect`, unit) }),
      }
  }
}

export function rectFrom(rect: SetupForm['hollows'][number], field: string, unit: LengthUnit): Rect {
  const side = (name: 'x0' | 'x1' | 'y0' | 'y1') => readLengthMm(rect[name], unit, `${field}.${name}`)
  return { x0Mm: side('x0'), x1Mm: side('x1'), y0Mm: side('y0'), y1Mm: side('y1') }
}

/** A spot and a countersink never come out below, whatever the form was left at. Fields a tool does not have are not looked at. */
function holeFrom(line: HoleForm, field: string, unit: LengthUnit, betweenJawsMm: number | null): Cut {
  const { tool } = line, through = line.through && tool !== 'spot' && tool !== 'countersink'
  const length = (name: string, text: string) => readLengthMm(text, unit, `${field}.${name}`)
  const number = (name: string, text: string, other: number) => (text.trim() === '' ? other : readNumber(text, `${field}.${name}`))
  const diameterMm = length('diameter', line.diameter), acrossMm = length('across', line.across)
  return {
    kind: 'hole', tool, through, diameterMm,
    xMm: typedMm(line.along, unit, `${field}.along`),
    yMm: line.from === 'fixed' ? acrossMm : neededBetween(betweenJawsMm, field) - acrossMm,
    ...(through ? {} : { depthMm: length('depth', line.depth) }),
    runThroughMm: (through ? typedMm(line.runThrough, unit, `${field}.runThrough`) : null) ?? formDefaults[unit].holeRunThroughMm,
    pointAngleDeg: tool === 'drill' ? number('pointAngle', line.pointAngle, commonPointDeg) : commonPointDeg,
    ...(tool === 'tap' ? { pitchMm: length('pitch', line.pitch) } : {}),
    leadThreads: tool === 'tap' ? number('leadThreads', line.leadThreads, commonLeadThreads) : commonLeadThreads,
  }
}

/** A distance from the moving jaw says where the hole is only once the part's size between the jaws is known. */
function neededBetween(betweenJawsMm: number | null, field: string): number {
  if (betweenJawsMm === null) throw new Refusal('field-missing', { field: 'between', given: null, needed: 'number', for: `${field}.across` })
  return betweenJawsMm
}
