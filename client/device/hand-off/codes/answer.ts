/**
 * The answer to another device's holdings: of each document what that device lacks (yjs, format 1). Like a hand-off file
 * in what it says, but in bytes instead of JSON: one change then fits into one code. Its hash is the session that each
 * frame carries.
 */
import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";
import * as z from "zod/mini";
import {
  allowedDocuments,
  type BundleRefusal,
  bundleSchemaVersion,
  type NamedUpdate,
  refuseBundle,
} from "#client/device/hand-off/bundle.ts";
import { packContent, unpackContent } from "./packed-content.ts";

export interface Answer {
  /** Session of the holdings that this answers. */
  readonly to: Uint8Array;
  readonly device: string;
  /** Name of the member who held the device. */
  readonly madeBy?: string;
  /** ISO 8601, UTC, by the device's clock; informative. */
  readonly at: string;
  readonly documents: readonly NamedUpdate[];
}

const shortText = z.string().check(z.minLength(1), z.maxLength(200));
const factsSchema = z.object({ device: shortText, madeBy: z.exactOptional(shortText), at: z.iso.datetime() });

export function writeAnswer({ to, device, madeBy, at, documents }: Answer): Uint8Array {
  return packContent((encoder) => {
    encoding.writeVarUint(encoder, bundleSchemaVersion);
    encoding.writeVarUint8Array(encoder, to);
    for (const text of [device, madeBy ?? "", at]) encoding.writeVarString(encoder, text);
    encoding.writeVarUint(encoder, documents.length);
    for (const { name, update } of documents) {
      encoding.writeVarString(encoder, name);
      encoding.writeVarUint8Array(encoder, update);
    }
  });
}

/** Reads what another device answers; its documents are judged later. Never throws. */
export function readAnswer(content: Uint8Array): { readonly ok: true; readonly answer: Answer } | BundleRefusal {
  const read = unpackContent<Answer | "newer">(content, (decoder) => {
    if (decoding.readVarUint(decoder) > bundleSchemaVersion) {
      decoding.readTailAsUint8Array(decoder);
      return "newer";
    }
    const to = decoding.readVarUint8Array(decoder).slice();
    const [device, madeBy, at] = [0, 1, 2].map(() => decoding.readVarString(decoder));
    const facts = z.safeParse(factsSchema, { device, at, ...(madeBy !== "" && { madeBy }) });
    const count = decoding.readVarUint(decoder);
    if (!facts.success || count > allowedDocuments) return undefined;
    const documents = Array.from({ length: count }, () => ({
      name: decoding.readVarString(decoder),
      update: decoding.readVarUint8Array(decoder).slice(),
    }));
    const names = new Set(documents.map(({ name }) => name));
    return names.size === count ? { to, ...facts.data, documents } : undefined;
  });
  if (read === undefined) return refuseBundle({ type: "damaged", of: "codes" });
  if (read !== "newer") return { ok: true, answer: read };
  return refuseBundle({ type: "newer version", of: "codes" });
}
