export type UpstreamUrl = { readonly ok: true; readonly url: URL } | { readonly ok: false; readonly sentence: string };

/** http for ws and https for wss: one address for its sockets and its plain requests. */
const plainByProtocol: ReadonlyMap<string, string> = new Map([
  ["http:", "http:"],
  ["https:", "https:"],
  ["ws:", "http:"],
  ["wss:", "https:"],
]);

/** Reads the value of `--upstream`; each mistake gives one sentence. The path of the result ends with a slash. */
export function parseUpstreamUrl(text: string): UpstreamUrl {
  const refused = (sentence: string): UpstreamUrl => ({ ok: false, sentence });
  if (!URL.canParse(text)) {
    return refused(`--upstream is "${text}"; it must be an address such as http://127.0.0.1:4681.`);
  }
  const url = new URL(text);
  const plain = plainByProtocol.get(url.protocol);
  if (plain === undefined) {
    return refused(`--upstream is "${text}"; it must begin with http://, https://, ws:// or wss://.`);
  }
  if (url.username !== "" || url.password !== "") {
    return refused("--upstream holds a user or a password; only a scheme, a host, a port and a path are allowed.");
  }
  if (url.search !== "" || url.hash !== "" || /[?#]/.test(text)) {
    return refused(`--upstream is "${text}"; nothing may follow its path: neither "?" nor "#".`);
  }
  // The scheme cannot be changed between ws and http on a URL that is there already.
  const address = new URL(`${plain}${url.href.slice(url.protocol.length)}`);
  if (!address.pathname.endsWith("/")) address.pathname += "/";
  return { ok: true, url: address };
}
