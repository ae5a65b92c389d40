import type { AnchorHTMLAttributes, MouseEvent } from 'react'
import { go } from '#web/router.ts'

/** A link within the app. With a modifier key the browser does what it always does. */
export function Link({ to, children, ...rest }: { readonly to: string } & Omit<AnchorHTMLAttributes<HTMLAnchorElement>, 'href'>) {
  const follow = (event: MouseEvent) => {
    if (event.defaultPrevented || event.button !== 0 || event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return
    event.preventDefault()
    go(to)
  }
  return <a {...rest} href={to} onClick={follow}>{children}</a>
}
