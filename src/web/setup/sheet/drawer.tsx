import { useEffect, useRef } from 'react'
import { type Desk, useDesk } from '#web/setup/desk.ts'
import { FormField } from '#web/setup/sheet/form-field.tsx'
import { cutFields, hollowFields, type SetupField, wishFields } from '#web/setup/sheet/setup-fields.ts'

/** The numbers of what lies open: a cut, a hollow, the wishes. What is chosen rather than typed stands in the options. */
export function Drawer() {
  const desk = useDesk(), fields = fieldsOpen(desk), { drawer } = desk.state
  const element = useRef<HTMLDivElement>(null), open = drawer && JSON.stringify(drawer), before = useRef(open)
  useEffect(() => {
    if (before.current !== open) element.current?.querySelector('input')?.focus()
    before.current = open
  }, [open])
  if (fields.length === 0) return null
  return <div className="setup-drawer" ref={element}>{fields.map((field) => <FormField key={field.path} field={field} />)}</div>
}

function fieldsOpen({ state: { drawer, form }, terms }: Desk): readonly SetupField[] {
  switch (drawer?.of) {
    case 'cut': {
      const cut = form.cuts[drawer.index]
      return cut ? cutFields(cut, drawer.index, form.unit, terms) : []
    }
    case 'hollow': return form.hollows[drawer.index] ? hollowFields(drawer.index) : []
    case 'wishes': return wishFields(form.unit)
    case 'vise':
    case undefined: return []
  }
}
