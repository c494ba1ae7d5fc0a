/**
 * Why a socket is in a document. A device says nothing about it; a server that links a document with its upstream says
 * whether it does so only to catch up, or because the document is open, and through which servers.
 */
export type SocketPurpose =
  | { readonly type: "device" }
  /** `through` names the servers for whose devices the document is open, so that a ring of servers is noticed. */
  | { readonly type: "open"; readonly through: readonly string[] }
  | { readonly type: "catch-up" };

/** Servers that one link may name; a longer row of servers is taken for a catch-up, which keeps nothing open. */
const maximumServers = 16;

const serverIdPattern = /^[a-z0-9]{1,32}$/;

/** A name of this run of the server, hardly ever given twice. @param random from 0 to below 1 */
export function createServerId(random: () => number): string {
  return Array.from({ length: 16 }, () => Math.floor(random() * 36).toString(36)).join("");
}

/** The purpose as a query for the address of the socket; empty for a device. */
export function purposeQuery(purpose: SocketPurpose): string {
  if (purpose.type === "device") return "";
  return purpose.type === "open" ? `?link=open&through=${purpose.through.join(",")}` : "?link=catch-up";
}

/** Reads the purpose from the address of a socket's request. What makes no sense is a device. */
export function purposeInUrl(requestUrl: string | undefined): SocketPurpose {
  const query = requestUrl?.split("?", 2)[1];
  const parameters = new URLSearchParams(query ?? "");
  const link = parameters.get("link");
  if (link === "catch-up") return { type: "catch-up" };
  if (link !== "open") return { type: "device" };
  const through = (parameters.get("through") ?? "").split(",");
  if (through.length > maximumServers) return { type: "catch-up" };
  return through.every((id) => serverIdPattern.test(id)) ? { type: "open", through } : { type: "device" };
}

/**
 * Whether a document is open, and through which servers: this one alone when a device of its own is in it, or this one
 * and those below it. A link that already leads through this server is no reason: in a ring, each server would keep
 * the document open for the next.
 * @param self this server's id
 */
export function openThrough(self: string, visitors: Iterable<SocketPurpose>): readonly string[] | undefined {
  const servers = new Set<string>();
  for (const visitor of visitors) {
    if (visitor.type === "device") return [self];
    if (visitor.type === "open" && !visitor.through.includes(self)) for (const id of visitor.through) servers.add(id);
  }
  return servers.size === 0 ? undefined : [self, ...[...servers].sort()];
}
