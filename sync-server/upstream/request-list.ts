import { get as getPlain, type IncomingMessage } from "node:http";
import { get as getSecure } from "node:https";
import { documentListPath, documentListSchema } from "#core/protocol/document-list.ts";
import { reasonOf } from "../logging.ts";
import type { DocumentListing } from "./upstream-port.ts";

/** Largest list of documents that is read, in bytes; a document takes about 60 of them. */
const maximumListBytes = 512 * 1024;

/**
 * Asks a server for its documents. Each question has a connection of its own, so that none waits for one that is dead.
 * Follows no redirection. Never rejects.
 * @param url http or https, with a path that ends with a slash
 */
export function requestList(url: URL, signal: AbortSignal): Promise<DocumentListing> {
  return new Promise((resolve) => {
    const get = url.protocol === "https:" ? getSecure : getPlain;
    get(new URL(`.${documentListPath}`, url), { signal, agent: false }, (response) => {
      readList(response).then(resolve, (error: unknown) => resolve(unreachable(error)));
    }).on("error", (error) => resolve(unreachable(error)));
  });
}

async function readList(response: IncomingMessage): Promise<DocumentListing> {
  if (response.statusCode !== 200) {
    response.destroy();
    return refused(`The upstream answers with HTTP ${response.statusCode}.`);
  }
  const parts: Buffer[] = [];
  let length = 0;
  // Leaving the loop ends the connection.
  for await (const part of response as AsyncIterable<Buffer>) {
    length += part.length;
    if (length > maximumListBytes) return refused("The upstream's list of documents is too long.");
    parts.push(part);
  }
  try {
    const list = documentListSchema.safeParse(JSON.parse(Buffer.concat(parts).toString()));
    return list.success ? { ok: true, list: list.data } : refused(notAList);
  } catch {
    return refused(notAList);
  }
}

const notAList = "What answers at the upstream's address lists no documents: it is no Pitslate server, or an old one.";

function unreachable(error: unknown): DocumentListing {
  return refused(`The upstream cannot be reached: ${reasonOf(error)}.`);
}

function refused(sentence: string): DocumentListing {
  return { ok: false, problem: { type: "no list", sentence } };
}
