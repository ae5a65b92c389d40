import { createServer } from 'node:net'

/** A port that nobody listens on just now. */
export async function freePort(): Promise<number> {
  return await new Promise((done, failed) => {
    const probe = createServer().once('error', failed).listen(0, '127.0.0.1', () => {
      const address = probe.address()
      probe.close(() => {
        if (typeof address === 'object' && address) done(address.port)
        else failed(new Error('no port'))
      })
    })
  })
}
