import type { ReactNode } from 'react'

/** What stands in here is what is printed: the size of the page comes from the shop, the rest of the screen stays away. */
export function Paper({ size, children }: { readonly size: 'A4' | 'Letter'; readonly children: ReactNode }) {
  return (
    <section className="paper" aria-label={`Page, ${size}`}>
      <style>{`@page { size: ${size}; margin: 0 }`}</style>
      {children}
    </section>
  )
}
