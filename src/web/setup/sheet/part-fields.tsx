import type { Scene } from '#drafting/scene.ts'
import { wordLength } from '#model/length.ts'
import type { CutForm } from '#model/setup-form.ts'
import { type Desk, useDesk } from '#web/setup/desk.ts'
import { FormField } from '#web/setup/sheet/form-field.tsx'
import { partFields } from '#web/setup/sheet/setup-fields.ts'
import { SpotButton } from '#web/setup/sheet/spot-button.tsx'
import { type Placed, placedOn } from '#web/setup/sheet/spot-style.ts'
import type { Drawer } from '#web/setup/state/setup-state.ts'

/** What is asked of the part, in the order of the questions: over the drawing where it has a place for them, else as a list. */
export function PartFields({ scene }: { readonly scene: Scene | null }) {
  const { state: { form, drawer }, dispatch, bench, units, terms } = useDesk(), viseOpen = drawer?.of === 'vise'
  return (
    <div className="setup-fields">
      <div className="setup-top">
        <SpotButton value={bench.vise.name} label={bench.jaws.name} said={`${terms.vise} ${bench.vise.name}, ${bench.jaws.name}. Change`} open={viseOpen} onPress={() => dispatch({ do: 'pull drawer', drawer: viseOpen ? null : { of: 'vise' } })} />
        <SpotButton
          value={form.shape === 'round' ? 'round' : 'block'} label="part" said={form.shape === 'round' ? 'The part is round. Make it a block' : 'The part is a block. Make it round'}
          onPress={() => dispatch({ do: 'change form', fields: { shape: form.shape === 'round' ? 'block' : 'round' } })}
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
  const desk = useDesk(), { state: { drawer }, dispatch } = desk, open = isOpen(drawer, { of: 'cut', index })
  return (
    <SpotButton
      value={valueOf(cut)} label={labelOf(cut, desk)} said={`${cut.kind} ${index + 1}: ${valueOf(cut)}, ${labelOf(cut, desk)}. Change`} open={open} placed={placed}
      onPress={() => dispatch({ do: 'pull drawer', drawer: open ? null : { of: 'cut', index } })}
    />
  )
}

function HollowButtons() {
  const { state: { form, drawer }, dispatch } = useDesk()
  return form.hollows.map((_hollow, index) => {
    const open = isOpen(drawer, { of: 'hollow', index })
    return <SpotButton key={index} value={index + 1} label="hollow" said={`Hollow ${index + 1}. Change`} open={open} onPress={() => dispatch({ do: 'pull drawer', drawer: open ? null : { of: 'hollow', index } })} />
  })
}

/** The height of the jaws on its dimension line: it comes with the vise and is changed there. */
function JawSpot({ scene, jaw }: { readonly scene: Scene; readonly jaw: string }) {
  const { terms, state: { drawer }, dispatch } = useDesk(), placed = placedOn(scene, 'jaw')
  if (!placed) return null
  const open = drawer?.of === 'vise'
  return <SpotButton value={jaw} label="jaw" said={`Jaws ${jaw} high. Change the ${terms.vise}`} open={open} placed={placed} onPress={() => dispatch({ do: 'pull drawer', drawer: open ? null : { of: 'vise' } })} />
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
