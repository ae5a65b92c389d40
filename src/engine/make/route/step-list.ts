import type { MachineKind } from '#model/machine.ts'
import type { MakeStep, NewBarStep, StepKind } from '#model/make-step.ts'
import type { RouteKind } from '#model/route.ts'
import type { Situation } from '#model/situation.ts'

const start: readonly NewBarStep[] = ['check the delivery', 'saw', 'square the ends'], end: readonly NewBarStep[] = ['stone and clean', 'inspect']
const softEdges: readonly NewBarStep[] = ['rough the edges', 'let lie', 'finish the edges', 'spring pass', 'deburr and mark']
const hardening: readonly NewBarStep[] = ['rough the edges', 'deburr and mark', 'clean for the furnace', 'harden', 'temper', 'read after hardening', 'straighten', 'temper again']

/** The steps of a route in the order of work, faces milled or not, and ground or not where the route grinds. Common practice, no source. */
export function stepsOf(route: RouteKind, milledFaces: boolean, groundFaces: boolean): readonly NewBarStep[] {
  const milled: readonly NewBarStep[] = milledFaces ? ['mill the faces'] : []
  switch (route) {
    case 'bought': return ['order', 'check the delivery', 'inspect']
    case 'as drawn':
    case 'as delivered': return [...start, 'deburr and mark', ...end]
    case 'milled':
    case 'milled prehardened': return [...start, ...milled, ...softEdges, ...end]
    case 'rubbed': return [...start, ...milled, ...softEdges, 'rub', ...end]
    case 'hard milled': return [...start, ...milled, ...hardening, 'hard mill the edges', ...end]
    case 'ground': return [...start, ...milled, ...hardening, ...(groundFaces ? (['grind the faces'] as const) : []), 'grind the edges', 'demagnetise and cool', ...end]
  }
}

/** Done outside where the shop has no furnace. */
export const furnaceSteps: readonly StepKind[] = ['harden', 'temper', 'temper again']

/** The machine of a step; one at the bench has none. Ends may be squared at the bench where there is no mill. */
export const machineOf: { readonly [step in StepKind]?: MachineKind } = {
  'saw': 'saw', 'mill the faces': 'mill', 'rough the edges': 'mill', 'finish the edges': 'mill', 'spring pass': 'mill', 'hard mill the edges': 'mill', 'rub': 'ground plate',
  'harden': 'furnace', 'temper': 'furnace', 'temper again': 'furnace', 'straighten': 'press', 'grind the faces': 'grinder', 'grind the edges': 'grinder',
  'grind the first face': 'grinder', 'grind the second face': 'grinder',
}

/** The calculation that fills the card of a step; sawing has its own by what is sawn. */
export const calcOf: { readonly [step in StepKind]?: MakeStep['calcs'][number] } = {
  'mill the faces': 'cutting', 'rough the edges': 'cutting', 'finish the edges': 'cutting', 'spring pass': 'cutting', 'hard mill the edges': 'cutting',
  'harden': 'heat', 'temper': 'heat', 'straighten': 'straighten', 'temper again': 'heat', 'grind the faces': 'grind', 'grind the edges': 'grind', 'inspect': 'shape',
}

/** What to be warned of at each step. Common practice, no source. */
export const cautionsAt: { readonly [step in StepKind]?: readonly Situation[] } = {
  'saw': ['sawing', 'sharp edges'], 'square the ends': ['sharp edges'], 'mill the faces': ['milling bars', 'handle off the vise'], 'rough the edges': ['milling bars', 'handle off the vise'],
  'finish the edges': ['milling bars', 'handle off the vise'], 'spring pass': ['milling bars', 'handle off the vise'], 'deburr and mark': ['sharp edges'], 'rub': ['rubbing'],
  'harden': ['furnace', 'quench', 'untempered'], 'temper': ['furnace', 'untempered'], 'read after hardening': ['untempered'], 'straighten': ['straightening'], 'temper again': ['furnace', 'straightening'],
  'hard mill the edges': ['hard milling', 'handle off the vise'], 'grind the faces': ['grinding wheel', 'magnetic chuck'], 'grind the edges': ['grinding wheel', 'grinding thin bars', 'magnetic chuck'], 'stone and clean': ['stoning'], 'inspect': ['at the plate'],
  'stone burrs': ['stoning'], 'read before grinding': ['at the plate'], 'grind the first face': ['grinding wheel', 'grinding thin bars', 'magnetic chuck'], 'grind the second face': ['grinding wheel', 'grinding thin bars', 'magnetic chuck'], 'mark anew': ['sharp edges'],
}
