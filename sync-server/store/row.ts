/** Readers of single fields of the database's rows, which the library gives without types. They throw on a wrong type. */

export function bytesIn(row: unknown): Uint8Array {
  const bytes = field(row, "bytes");
  if (bytes instanceof ArrayBuffer) return new Uint8Array(bytes);
  // One row alone comes as a Buffer.
  if (bytes instanceof Uint8Array) return new Uint8Array(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  throw new Error("The log holds a row without bytes.");
}

export function textIn(row: unknown, name: string): string {
  const text = field(row, name);
  if (typeof text !== "string") throw new Error(`The log holds a row without ${name}.`);
  return text;
}

export function numberIn(row: unknown, name: string): number {
  const number = field(row, name);
  if (typeof number !== "number") throw new Error(`The log does not tell its ${name}.`);
  return number;
}

function field(row: unknown, name: string): unknown {
  return typeof row === "object" && row !== null ? (row as Record<string, unknown>)[name] : undefined;
}
