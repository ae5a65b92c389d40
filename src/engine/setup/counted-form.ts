import type { CutForm, SetupForm } from '#model/setup-form.ts'

/** The lines of a form that are filled in far enough to be counted, and which lines of the screen they are. */
export type CountedForm = {
  readonly form: SetupForm
  /** For each cut of `form` the line it stands in on the screen. */
  readonly lines: readonly number[]
  readonly hollowLines: readonly number[]
  /** Lines of the screen not counted yet: fields still empty. */
  readonly unfinished: readonly { readonly of: 'cut' | 'hollow'; readonly line: number }[]
}

/** Leaves out the cuts and hollows that still lack a size, so that the answer stands while they are typed. It has to say so. */
export function countedForm(form: SetupForm): CountedForm {
  const lines = indexesOf(form.cuts, (cut) => isFinished(cut, form))
  const hollowLines = indexesOf(form.hollows, (hollow) => Object.values(hollow).every(isTyped))
  return {
    form: { ...form, cuts: lines.map((line) => placedOrNot(form.cuts[line]!)), hollows: hollowLines.map((line) => form.hollows[line]!) },
    lines, hollowLines,
    unfinished: [
      ...form.cuts.flatMap((cut, line) => (lines.includes(line) && placedOrNot(cut) === cut ? [] : [{ of: 'cut', line } as const])),
      ...form.hollows.flatMap((_hollow, line) => (hollowLines.includes(line) ? [] : [{ of: 'hollow', line } as const])),
    ],
  }
}

/** The field on the screen for a field of the counted form: `cuts[0].diameter` may be `cuts[2].diameter` there. */
export function fieldOnScreen(path: string, { lines, hollowLines }: Pick<CountedForm, 'lines' | 'hollowLines'>): string {
  const found = /^(cuts|hollows)\[(\d+)\](.*)$/.exec(path)
  if (!found) return path
  const line = (found[1] === 'cuts' ? lines : hollowLines)[Number(found[2])]
  return line === undefined ? path : `${found[1]}[${line}]${found[3]}`
}

/** A hole measured from the moving jaw stands nowhere until the part's size between the jaws is known. */
function isFinished(cut: CutForm, form: SetupForm): boolean {
  switch (cut.kind) {
    case 'end': return isTyped(cut.stock)
    case 'step':
    case 'slot': return isTyped(cut.depth)
    case 'hole': {
      const blind = !cut.through || cut.tool === 'spot' || cut.tool === 'countersink'
      const needed = [cut.diameter, cut.across, ...(blind ? [cut.depth] : []), ...(cut.tool === 'tap' ? [cut.pitch] : [])]
      return needed.every(isTyped) && (cut.from === 'fixed' || form.shape === 'round' || isTyped(form.between))
    }
  }
}

/** A cut whose place is half given counts as one without a place: the answer then says that nobody knows where it is. */
function placedOrNot(cut: CutForm): CutForm {
  return (cut.kind === 'step' || cut.kind === 'slot') && cut.rect !== null && !Object.values(cut.rect).every(isTyped) ? { ...cut, rect: null } : cut
}

const isTyped = (text: string): boolean => text.trim() !== ''

function indexesOf<One>(list: readonly One[], wanted: (one: One) => boolean): readonly number[] {
  return list.flatMap((one, index) => (wanted(one) ? [index] : []))
}
