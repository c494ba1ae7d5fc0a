const loopbackNames: ReadonlySet<string> = new Set(["localhost", "127.0.0.1", "[::1]", "::1"]);

/** Whether a host to listen on is this machine alone. */
export function isLoopbackHost(host: string): boolean {
  return loopbackNames.has(host);
}

/**
 * Whether a request comes from a page of this machine or from no page at all. Without it any page that the browser
 * shows could talk to the server behind the browser's back, by a form, a socket, or a name that resolves to loopback.
 * @param host the Host header
 * @param origin the Origin header, which a browser sets on every socket
 */
export function isFromThisMachine(host: string | undefined, origin: string | undefined): boolean {
  return isLoopbackUrl(`http://${host}`) && (origin === undefined || isLoopbackUrl(origin));
}

function isLoopbackUrl(text: string): boolean {
  try {
    return loopbackNames.has(new URL(text).hostname);
  } catch {
    return false;
  }
}
