import type { SetupForm } from '#model/setup-form.ts'

/** The text of one typed field of the form, by its path: `height`, `cuts[0].diameter`, `cuts[1].rect.x0`, `wishes.grip`. Empty where there is none. */
export function textAt(form: SetupForm, path: string): string {
  const found = stepsOf(path).reduce<unknown>((node, step) => (isNode(node) ? node[step] : undefined), form)
  return typeof found === 'string' ? found : ''
}

/** The form with another text in one field; the form itself where there is no such field. */
export function withText(form: SetupForm, path: string, text: string): SetupForm {
  return put(form, stepsOf(path), text) as SetupForm
}

type Node = { readonly [step: string]: unknown }
const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null

function stepsOf(path: string): readonly string[] {
  return path.split(/[.[\]]+/).filter((step) => step !== '')
}

function put(node: unknown, [step, ...rest]: readonly string[], text: string): unknown {
  if (step === undefined) return typeof node === 'string' ? text : node
  if (!isNode(node) || !Object.hasOwn(node, step)) return node
  const inside = put(node[step], rest, text)
  if (Array.isArray(node)) return node.map((old: unknown, at) => (at === Number(step) ? inside : old))
  return { ...node, [step]: inside }
}
