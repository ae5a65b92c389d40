/** Sent with every answer. `wasm-unsafe-eval` lets the solver of cut lists in, which is compiled WebAssembly of our own files; it lets no text be run. Set on Node's own response, which costs a fraction of a middleware. */
export const headers: readonly (readonly [name: string, value: string])[] = [
  ['content-security-policy', [
    "default-src 'self'", "script-src 'self' 'wasm-unsafe-eval'", "style-src 'self' 'unsafe-inline'", "img-src 'self' data: blob:", "worker-src 'self'", "connect-src 'self'",
    "font-src 'self'", "form-action 'self'", "frame-ancestors 'none'", "base-uri 'none'", "object-src 'none'",
  ].join('; ')],
  ['x-content-type-options', 'nosniff'],
  ['referrer-policy', 'no-referrer'],
  ['cross-origin-opener-policy', 'same-origin'],
  ['cross-origin-resource-policy', 'same-origin'],
  ['permissions-policy', 'camera=(), microphone=(), geolocation=()'],
]
