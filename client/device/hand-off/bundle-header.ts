/** The first line of a bundle. */
import { digest } from "lib0/hash/sha256";
import * as z from "zod/mini";
import {
  allowedHeaderBytes,
  type BundleHeader,
  type BundleRefusal,
  bundleFormat,
  bundleHeaderSchema,
  bundleSchemaVersion,
  bundleVersion,
  refuseBundle,
} from "./bundle.ts";

const LINE_FEED = 0x0a;

/** A header line with the packed documents behind it. */
export function joinHeader(header: Omit<BundleHeader, "sha256">, packed: Uint8Array): Uint8Array {
  const sha256 = hashOf(JSON.stringify(header), packed);
  const line = new TextEncoder().encode(`${JSON.stringify({ ...header, sha256 })}\n`);
  return joined(line, packed);
}

/** The header, whose hash agrees with the whole file, and the packed documents. Never throws. */
export function splitHeader(
  file: Uint8Array,
): { readonly ok: true; readonly header: BundleHeader; readonly packed: Uint8Array } | BundleRefusal {
  const end = file.subarray(0, allowedHeaderBytes).indexOf(LINE_FEED);
  const raw = end < 0 ? undefined : parseLine(file.subarray(0, end));
  if (raw?.format !== bundleFormat) {
    return refuseBundle({ type: "foreign" });
  }
  if (isAbove(raw.version, bundleVersion) || isAbove(raw.schemaVersion, bundleSchemaVersion)) {
    return refuseBundle({ type: "newer version", of: "file" });
  }
  const packed = file.subarray(end + 1);
  const { sha256, ...rest } = raw;
  const parsed = z.safeParse(bundleHeaderSchema, raw);
  if (!parsed.success || sha256 !== hashOf(JSON.stringify(rest), packed)) {
    return refuseBundle({ type: "damaged", of: "file" });
  }
  return { ok: true, header: parsed.data, packed };
}

function parseLine(line: Uint8Array): Readonly<Record<string, unknown>> | undefined {
  try {
    const raw: unknown = JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(line));
    return typeof raw === "object" && raw !== null ? (raw as Record<string, unknown>) : undefined;
  } catch {
    return undefined;
  }
}

function isAbove(version: unknown, own: number): boolean {
  return typeof version === "number" && version > own;
}

// crypto.subtle is missing on http in a local network, so the hash is computed in plain code.
function hashOf(headerText: string, packed: Uint8Array): string {
  const bytes = digest(joined(new TextEncoder().encode(headerText), packed));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

function joined(first: Uint8Array, second: Uint8Array): Uint8Array {
  const whole = new Uint8Array(first.length + second.length);
  whole.set(first);
  whole.set(second, first.length);
  return whole;
}
