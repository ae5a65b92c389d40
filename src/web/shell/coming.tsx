import { useEffect, useState } from 'react'

const soonMs = 3000

/** Stands where a part of the app is still to come, and says why once that takes long. */
export function Coming() {
  const [late, setLate] = useState(false)
  useEffect(() => {
    const timer = setTimeout(() => setLate(true), soonMs)
    return () => clearTimeout(timer)
  }, [])
  if (!late) return <output className="page">Opening</output>
  return (
    <div className="page">
      <h1>This page is still to come</h1>
      <p>It is fetched from the shop’s server when it is first opened, and that does not answer. See that the computer it runs on is switched on and in the same network.</p>
      <p>The page opens by itself as soon as the server answers. The other pages go on working, and what you did is kept.</p>
    </div>
  )
}
