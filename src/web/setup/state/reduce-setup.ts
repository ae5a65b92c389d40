import { emptyCutForm } from '#engine/setup/form.ts'
import type { CutForm, SetupForm } from '#model/setup-form.ts'
import { textAt, withText } from '#web/setup/state/field-path.ts'
import { type Pattern, withPattern } from '#web/setup/state/hole-pattern.ts'
import { type HoldField, withHold } from '#web/setup/state/hold-typed.ts'
import { textRefusal } from '#web/setup/state/readable.ts'
import type { Drawer, SetupState } from '#web/setup/state/setup-state.ts'

/** What a person can do on the screen short of writing to the shop. */
export type SetupAction =
  | { readonly do: 'enter field' | 'leave field'; readonly path: string }
  | { readonly do: 'type'; readonly path: string; readonly text: string }
  | { readonly do: 'type why not' | 'name setup' | 'name operation'; readonly text: string }
  | { readonly do: 'change form'; readonly fields: Partial<Pick<SetupForm, 'shape' | 'use'>> }
  | { readonly do: 'take side'; readonly side: NonNullable<SetupForm['side']> }
  | { readonly do: 'type hold'; readonly viseId: string; readonly field: HoldField; readonly text: string }
  | { readonly do: 'add cut'; readonly kind: CutForm['kind'] }
  | { readonly do: 'change cut'; readonly index: number; readonly cut: CutForm }
  | { readonly do: 'mirror hole'; readonly index: number; readonly pattern: Pattern }
  | { readonly do: 'remove cut' | 'remove hollow'; readonly index: number }
  | { readonly do: 'add hollow' }
  | { readonly do: 'pull drawer'; readonly drawer: Drawer }
  | { readonly do: 'take vise'; readonly viseId: string }
  | { readonly do: 'look at'; readonly chosen: string | null }
  | { readonly do: 'put'; readonly state: SetupState }
  | { readonly do: 'saved'; readonly setupId: string | null }

/** The screen after one thing was done. Whatever changes the question goes back to the first choice. */
export function reduceSetup(state: SetupState, action: SetupAction): SetupState {
  switch (action.do) {
    case 'enter field': return { ...state, typing: { path: action.path, lastGood: readableOr('', state, action.path), begun: false } }
    case 'leave field': return state.typing?.path === action.path ? { ...state, typing: null } : state
    case 'type': return typed(state, action.path, action.text)
    case 'type why not': return { ...state, whyNot: action.text }
    case 'name setup': return { ...state, title: action.text }
    case 'name operation': return { ...state, operation: action.text }
    case 'change form': return asking(state, { ...state.form, ...action.fields })
    // it says what will come out, not which bars serve: the choice looked at stays
    case 'take side': return { ...state, form: { ...state.form, side: action.side } }
    case 'type hold': return withHold(state, action.viseId, action.field, action.text)
    case 'add cut': return { ...asking(state, { ...state.form, cuts: [...state.form.cuts, emptyCutForm(action.kind)] }), drawer: { of: 'cut', index: state.form.cuts.length } }
    case 'change cut': return asking(state, { ...state.form, cuts: state.form.cuts.with(action.index, action.cut) })
    case 'mirror hole': return asking(state, withPattern(state.form, action.index, action.pattern))
    case 'remove cut': return { ...asking(state, { ...state.form, cuts: state.form.cuts.toSpliced(action.index, 1) }), drawer: null }
    case 'add hollow': return { ...asking(state, { ...state.form, hollows: [...state.form.hollows, emptyRect] }), drawer: { of: 'hollow', index: state.form.hollows.length } }
    case 'remove hollow': return { ...asking(state, { ...state.form, hollows: state.form.hollows.toSpliced(action.index, 1) }), drawer: null }
    case 'pull drawer': return { ...state, drawer: action.drawer }
    case 'take vise': return { ...state, viseId: action.viseId, chosen: null, drawer: null }
    case 'look at': return { ...state, chosen: action.chosen }
    // another part, and the same vises, cutter and drill
    case 'put': return { ...action.state, atHand: state.atHand }
    case 'saved': return { ...state, setupId: action.setupId }
  }
}

function typed(state: SetupState, path: string, text: string): SetupState {
  const lastGood = state.typing?.path === path ? state.typing.lastGood : readableOr('', state, path)
  const next = asking(state, withText(state.form, path, text))
  return { ...next, typing: { path, lastGood: readableOr(lastGood, next, path), begun: true } }
}

function readableOr(instead: string, { form }: SetupState, path: string): string {
  const text = textAt(form, path)
  return textRefusal(path, text, form.unit) === null ? text : instead
}

const emptyRect = { x0: '', x1: '', y0: '', y1: '' } as const

const asking = (state: SetupState, form: SetupForm): SetupState => ({ ...state, form, chosen: null })
