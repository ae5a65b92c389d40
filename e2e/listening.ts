/** A stream that notes when each event came, and when it ended. */
export async function listening(url: string, headers: { readonly [name: string]: string } = {}) {
  const answer = await fetch(`${url}/api/live`, { headers }), events: { event: string; atMs: number }[] = []
  const ended = (async () => {
    let text = ''
    try {
      for await (const piece of answer.body!) {
        text += new TextDecoder().decode(piece)
        for (let end = text.indexOf('\n\n'); end >= 0; end = text.indexOf('\n\n')) {
          events.push({ event: /^event: (\w+)/m.exec(text)![1]!, atMs: performance.now() })
          text = text.slice(end + 2)
        }
      }
    } catch { /* cut off */ }
    return performance.now()
  })()
  const until = async (event: string, count: number) => {
    for (let tries = 0; tries < 200; tries += 1) {
      const found = events.filter((one) => one.event === event)
      if (found.length >= count) return found.at(-1)!.atMs
      await new Promise((done) => { setTimeout(done, 10) })
    }
    throw new Error(`no ${count} of ${event}: ${JSON.stringify(events)}`)
  }
  return { type: answer.headers.get('content-type'), status: answer.status, ended, until }
}
