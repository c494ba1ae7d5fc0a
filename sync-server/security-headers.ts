/**
 * Headers of every answer. Scripts, styles and sockets come from this server alone. Style attributes are allowed because
 * components set them; style sheets are not. WebAssembly may be compiled, for the reader of codes; text may not be run as a script.
 * @param host the Host header, for browsers in which `'self'` does not cover sockets
 */
export function securityHeaders(host: string): Readonly<Record<string, string>> {
  const policy = [
    "default-src 'self'",
    `connect-src 'self' ws://${host} wss://${host}`,
    "script-src 'self' 'wasm-unsafe-eval'",
    "style-src 'self'",
    "style-src-attr 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join("; ");
  return {
    "content-security-policy": policy,
    "x-content-type-options": "nosniff",
    "referrer-policy": "no-referrer",
    "cross-origin-opener-policy": "same-origin",
    "cross-origin-resource-policy": "same-origin",
  };
}
