import { createServer as createHttp, type RequestListener, type Server as HttpServer } from 'node:http'
import { createServer as createHttps, type Server as HttpsServer } from 'node:https'
import { createServer, type Server, type Socket } from 'node:net'

/** Heads and whole requests that come slower than this are cut off: a connection is not to be had for nothing. */
const usualPatience = { headersTimeout: 10_000, requestTimeout: 60_000, connectionsCheckingInterval: 2_000, keepAliveTimeout: 5_000 }
/** First byte of a connection that begins with TLS. @source RFC-8446 (5.1: content type handshake) */
const tlsHandshake = 22

type Patience = typeof usualPatience

export type OnePort = {
  readonly front: Server
  /** What connections from now on are shown; null where there is plain http alone. */
  readonly show: ((shown: { readonly cert: string; readonly key: string }) => void) | null
  readonly closeIdle: () => void
  readonly closeAll: () => void
}

/**
 * A server of plain http; with a certificate, https and plain http on one port, told apart by the first byte, so that
 * nobody has to know a second number.
 *
 * @param plain  who answers on plain http
 */
export function onePort(plain: RequestListener, secure: { readonly listener: RequestListener; readonly shown: { readonly cert: string; readonly key: string } } | null, patience: Patience = usualPatience): OnePort {
  const http = createHttp(patience, plain)
  if (secure === null) return { front: http, show: null, closeIdle: () => http.closeIdleConnections(), closeAll: () => http.closeAllConnections() }
  const https = createHttps({ ...patience, ...secure.shown, minVersion: 'TLSv1.2' }, secure.listener), silent = new Set<Socket>()
  const front = createServer((socket) => handOn(socket, http, https, silent, patience.headersTimeout))
  // The two inner ones never listen by themselves; told that they do, they watch for slow requests.
  front.on('listening', () => { for (const inner of [http, https]) inner.emit('listening') })
  const both = (what: (inner: HttpServer | HttpsServer) => void) => { what(http); what(https) }
  const dropSilent = () => { for (const socket of silent) socket.destroy() }
  front.on('close', () => both((inner) => { inner.close() }))
  return {
    front, show: (shown) => https.setSecureContext({ ...shown, minVersion: 'TLSv1.2' }),
    closeIdle: () => { dropSilent(); both((inner) => inner.closeIdleConnections()) },
    closeAll: () => { dropSilent(); both((inner) => inner.closeAllConnections()) },
  }
}

/** Waits for the first byte and gives the connection to whom it is for, the byte put back. */
function handOn(socket: Socket, http: HttpServer, https: HttpsServer, silent: Set<Socket>, patienceMs: number): void {
  silent.add(socket)
  const drop = () => { socket.destroy() }
  socket.setTimeout(patienceMs, drop)
  socket.on('error', drop).once('close', () => silent.delete(socket))
  socket.once('readable', () => {
    const first = socket.read(1) as Buffer | null
    if (first === null) return drop()
    silent.delete(socket)
    socket.off('error', drop).setTimeout(0)
    socket.off('timeout', drop)
    socket.unshift(first)
    const inner = first[0] === tlsHandshake ? https : http
    inner.emit('connection', socket)
  })
}
