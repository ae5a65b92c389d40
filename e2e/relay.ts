import { createServer, connect, type AddressInfo } from 'node:net'

export type Relay = { readonly port: number; readonly url: string; readonly close: () => Promise<void> }

/** Carries connections to a shop from another address than the machine's own, 127.0.0.2: for the shop they come from its network. */
export async function relayTo(shopUrl: string): Promise<Relay> {
  const to = Number(new URL(shopUrl).port)
  const server = createServer((near) => {
    const far = connect({ port: to, host: '127.0.0.1', localAddress: '127.0.0.2' })
    near.on('error', () => far.destroy()).on('close', () => far.destroy()).pipe(far)
    far.on('error', () => near.destroy()).on('close', () => near.destroy()).pipe(near)
  })
  await new Promise<void>((done) => { server.listen(0, '127.0.0.1', done) })
  const { port } = server.address() as AddressInfo
  return { port, url: `http://127.0.0.1:${port}`, close: () => new Promise((done) => { server.close(() => done()) }) }
}
