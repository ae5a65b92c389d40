import type { Scene } from '#drafting/scene.ts'
import { wordLength } from '#model/length.ts'
import type { CutForm } from '#model/setup-form.ts'
import { type Desk, useDesk } from '#web/setup/desk.ts'
import { FormField } from '#web/setup/sheet/form-field.tsx'
import { partFields } from '#web/setup/sheet/setup-fields.ts'
import { SpotButton, type SpotProps } from '#web/setup/sheet/spot-button.tsx'
import { type Placed, placedOn } from '#web/setup/sheet/spot-style.ts'
import type { Drawer } from '#web/setup/state/setup-state.ts'

/** What is asked of the part, in the order of the questions: over the drawing where it has a place for them, else as a list. */
export function PartFields({ scene }: { readonly scene: Scene | null }) {
  const { state: { form }, dispatch, bench, units, terms } = useDesk(), isRound = form.shape === 'round'
  return (
    <div className="setup-fields">
      <div className="setup-top">
        <DrawerButton drawer={{ of: 'vise' }} value={bench.vise.name} label={bench.jaws.name} said={`${terms.vise} ${bench.vise.name}, ${bench.jaws.name}. Change`} />
        <SpotButton
          value={isRound ? 'round' : 'block'} label="part" said={isRound ? 'The part is round. Make it a block' : 'The part is a block. Make it round'}
          onPress={() => dispatch({ do: 'change form', fields: { shape: isRound ? 'block' : 'round' } })}
        />
        {form.unit === units.length ? null : <p className="setup-typed-in"><strong>{form.unit === 'in' ? 'inch' : 'mm'}</strong><span>typed in</span></p>}
      </div>
      {partFields(form).map((field) => <FormField key={field.path} field={field} placed={placedOn(scene, field.path)} />)}
      {form.cuts.map((cut, index) => (isListed(scene, index) ? null : <CutButton key={index} cut={cut} index={index} placed={placedOn(scene, `cuts[${index}]`)} />))}
      {scene ? null : <HollowButtons />}
      <SpotButton value="+" label="cut" said="Add a hole or another cut" id="add-cut" placed={placedOn(scene, 'addCut')} onPress={() => dispatch({ do: 'add cut', kind: 'hole' })} />
      {scene && <JawSpot scene={scene} jaw={wordLength(bench.jaws.fixedHeightMm, units)} />}
    </div>
  )
}

/** The cuts and hollows that the drawing has no room for, in a row under it. */
export function UnplacedCuts({ scene }: { readonly scene: Scene | null }) {
  const { state: { form } } = useDesk(), listed = form.cuts.flatMap((cut, index) => (isListed(scene, index) ? [{ cut, index }] : []))
  if (scene === null || listed.length + form.hollows.length === 0) return null
  return <div className="setup-strip">{listed.map(({ cut, index }) => <CutButton key={index} cut={cut} index={index} />)}<HollowButtons /></div>
}

const isListed = (scene: Scene | null, index: number): boolean => scene !== null && !placedOn(scene, `cuts[${index}]`)

function CutButton({ cut, index, placed }: { readonly cut: CutForm; readonly index: number; readonly placed?: Placed | undefined }) {
  const desk = useDesk(), value = valueOf(cut), label = labelOf(cut, desk)
  return <DrawerButton drawer={{ of: 'cut', index }} value={value} label={label} said={`${cut.kind} ${index + 1}: ${value}, ${label}. Change`} placed={placed} />
}

function HollowButtons() {
  const { state: { form: { hollows } } } = useDesk()
  return hollows.map((_hollow, index) => <DrawerButton key={index} drawer={{ of: 'hollow', index }} value={index + 1} label="hollow" said={`Hollow ${index + 1}. Change`} />)
}

/** The height of the jaws on its dimension line: it comes with the vise and is changed there. */
function JawSpot({ scene, jaw }: { readonly scene: Scene; readonly jaw: string }) {
  const { terms } = useDesk(), placed = placedOn(scene, 'jaw')
  return placed ? <DrawerButton drawer={{ of: 'vise' }} value={jaw} label="jaw" said={`Jaws ${jaw} high. Change the ${terms.vise}`} placed={placed} /> : null
}

/** Pulls a drawer out, or pushes it back. */
function DrawerButton({ drawer, ...button }: Omit<SpotProps, 'open' | 'onPress'> & { readonly drawer: NonNullable<Drawer> }) {
  const { state, dispatch } = useDesk(), open = isOpen(state.drawer, drawer)
  return <SpotButton {...button} open={open} onPress={() => dispatch({ do: 'pull drawer', drawer: open ? null : drawer })} />
}

export function isOpen(drawer: Drawer, one: NonNullable<Drawer>): boolean {
  if (drawer?.of !== one.of) return false
  return 'index' in drawer && 'index' in one ? drawer.index === one.index : true
}

function valueOf(cut: CutForm): string {
  switch (cut.kind) {
    case 'hole': return cut.diameter.trim() === '' ? '⌀' : `⌀ ${cut.diameter}`
    case 'end': return cut.stock.trim() === '' ? 'end' : cut.stock
    case 'step':
    case 'slot': return cut.depth.trim() === '' ? cut.kind : cut.depth
  }
}

function labelOf(cut: CutForm, { terms }: Pick<Desk, 'terms'>): string {
  switch (cut.kind) {
    case 'hole': return cut.across.trim() === '' ? cut.tool : `${cut.across} from ${cut.from === 'fixed' ? 'jaw' : terms.movingJaw.split(' ')[0]!}`
    case 'end': return `${cut.side} end`
    case 'step':
    case 'slot': return cut.kind
  }
}
