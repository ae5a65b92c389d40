import { emptyCutForm } from '#engine/setup/form.ts'
import { type Tool, tools } from '#model/cut.ts'
import type { CutForm, EndForm, HoleForm, MilledForm } from '#model/setup-form.ts'
import { Choice } from '#web/parts/choice.tsx'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { useDesk } from '#web/setup/desk.ts'
import { HolePatterns } from '#web/setup/options/hole-patterns.tsx'

type Props<Cut extends CutForm> = { readonly cut: Cut; readonly index: number }

const kinds = [{ value: 'hole', label: 'hole' }, { value: 'step', label: 'step' }, { value: 'slot', label: 'slot' }, { value: 'end', label: 'end' }, { value: 'hollow', label: 'hollow' }] as const
const toolWords: { readonly [tool in Tool]: string } = { drill: 'drill', tap: 'tap', ream: 'ream', spot: 'spot', countersink: 'counter\u00ADsink' }

const depths = [{ value: 'through', label: 'through' }, { value: 'blind', label: 'blind' }] as const
const ends = [{ value: 'left', label: 'left end' }, { value: 'right', label: 'right end' }] as const

/** What only goes in as far as its diameter says. */
const isConical = (tool: Tool): boolean => tool === 'spot' || tool === 'countersink'

/** A cut nobody has typed into yet can still become any kind; one that is typed keeps its kind. */
export function CutOptions({ cut, index }: Props<CutForm>) {
  const { state, dispatch } = useDesk()
  const untouched = Object.entries(emptyCutForm(cut.kind)).every(([name, value]) => typeof value !== 'string' || cut[name as never] === value)
  const become = (kind: CutForm['kind'] | 'hollow') => {
    if (kind !== 'hollow') return dispatch({ do: 'change cut', index, cut: emptyCutForm(kind) })
    dispatch({ do: 'remove cut', index })
    dispatch({ do: 'add hollow' })
  }
  const remove = () => {
    dispatch({ do: 'remove cut', index })
    document.getElementById('add-cut')?.focus()
    if (!untouched) offerUndo(`${cut.kind} ${index + 1} removed.`, () => dispatch({ do: 'put', state }))
  }
  return (
    <>
      {untouched ? <Choice quiet label="Kind of cut" value={cut.kind} options={kinds} onChange={become} /> : null}
      {cut.kind === 'hole' ? <HoleOptions cut={cut} index={index} /> : cut.kind === 'end' ? <EndOptions cut={cut} index={index} /> : <MilledOptions cut={cut} index={index} />}
      <div className="setup-last">
        {cut.kind === 'hole' ? <HolePatterns index={index} /> : null}
        <button type="button" className="action" onClick={remove}>Remove</button>
      </div>
    </>
  )
}

function HoleOptions({ cut, index }: Props<HoleForm>) {
  const { dispatch, terms } = useDesk(), change = (part: Partial<HoleForm>) => dispatch({ do: 'change cut', index, cut: { ...cut, ...part } })
  return (
    <>
      <div className="setup-pairs">
        <Choice quiet label="Measured from" value={cut.from} options={[{ value: 'fixed', label: 'fixed jaw' }, { value: 'moving', label: terms.movingJaw }]} onChange={(from) => change({ from })} />
        {isConical(cut.tool) ? null : <Choice quiet label="How deep" value={cut.through ? 'through' : 'blind'} options={depths} onChange={(depth) => change({ through: depth === 'through' })} />}
      </div>
      <Choice
        quiet label="Tool" value={cut.tool} options={tools.map((tool) => ({ value: tool, label: toolWords[tool] }))}
        onChange={(tool) => change({ tool, through: !isConical(tool) && cut.through })}
      />
    </>
  )
}

function EndOptions({ cut, index }: Props<EndForm>) {
  const { dispatch } = useDesk()
  return <Choice quiet label="Which end" value={cut.side} options={ends} onChange={(side) => dispatch({ do: 'change cut', index, cut: { ...cut, side } })} />
}

function MilledOptions({ cut, index }: Props<MilledForm>) {
  const { dispatch } = useDesk(), change = (part: Partial<MilledForm>) => dispatch({ do: 'change cut', index, cut: { ...cut, ...part } })
  return (
    <>
      <Choice
        quiet label="Whether the cutter passes over a jaw" value={cut.overJaw ? 'over' : 'between'}
        options={[{ value: 'over', label: 'passes over a jaw' }, { value: 'between', label: 'stays between the jaws' }]} onChange={(passes) => change({ overJaw: passes === 'over' })}
      />
      <Choice
        quiet label="Its place" value={cut.rect === null ? 'open' : 'placed'} options={[{ value: 'open', label: 'place left open' }, { value: 'placed', label: 'place given' }]}
        onChange={(place) => change({ rect: place === 'open' ? null : { x0: '', x1: '', y0: '', y1: '' } })}
      />
    </>
  )
}
