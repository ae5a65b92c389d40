import { Component, type ReactNode } from 'react'

type Props = { readonly children: ReactNode }
type State = { readonly fault: string | null }

/** Keeps a page that fails by a fault of ours from taking header, number pad and the work that waits with it. */
export class PageFault extends Component<Props, State> {
  override state: State = { fault: null }

  static getDerivedStateFromError(error: unknown): State {
    return { fault: error instanceof Error ? error.message : String(error) }
  }

  override render(): ReactNode {
    const { fault } = this.state
    if (fault === null) return this.props.children
    return (
      <div className="page" role="alert">
        <h1>This page failed</h1>
        <p>That is a fault of Twinrest, not of what you did; what you did is kept. The other pages go on working.</p>
        <p>What it said: {fault}</p>
        <div><button type="button" className="action main" onClick={() => location.reload()}>Open it again</button></div>
      </div>
    )
  }
}
