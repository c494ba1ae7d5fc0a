/** What {@link examineJson} finds. */
export type JsonExamination = {
  /** The value as JSON with sorted keys: equal texts mean equal values. */
  readonly text: string;
  /** Why the value is not plain JSON; absent when it is. */
  readonly problem?: { readonly path: string; readonly what: string };
};

/** Deepest nesting that a record may have; deeper ones would overflow recursive readers. */
export const allowedDepth = 32;

/**
 * Writes any value as canonical text and tells whether it is plain JSON: null,
 * booleans, finite numbers, strings, arrays and plain objects, at most
 * {@link allowedDepth} deep. What is not JSON gets a mark of its own in the
 * text, so that two different values never share one. Never throws, and walks
 * without recursion, because the value may come from a hostile peer.
 */
export function examineJson(root: unknown): JsonExamination {
  const plain = plainText(root, 0);
  if (plain !== undefined) return { text: plain };
  const pieces: string[] = [];
  const work: Array<string | Visit> = [{ value: root, depth: 0, step: "" }];
  let problem: JsonExamination["problem"];
  for (let next = work.pop(); next !== undefined; next = work.pop()) {
    if (typeof next === "string") {
      pieces.push(next);
      continue;
    }
    const what = next.depth > allowedDepth ? `nested more than ${allowedDepth} deep` : notJson(next.value);
    if (what !== undefined) problem ??= { path: pathOf(next), what };
    if (typeof next.value !== "object" || next.value === null || next.depth > deepestWalk) {
      pieces.push(leafText(next.value));
    } else if (next.value instanceof Uint8Array) {
      pieces.push(`${mark}bytes(${next.value.join()})`);
    } else {
      if (what !== undefined) pieces.push(`${mark}(${what})`);
      scheduleChildren(work, next, next.value);
    }
  }
  return problem === undefined ? { text: pieces.join("") } : { text: pieces.join(""), problem };
}

/** True when two values are deeply equal, whatever the order of their keys. */
export function sameJson(one: unknown, other: unknown): boolean {
  return Object.is(one, other) || examineJson(one).text === examineJson(other).text;
}

/** True for an object that is neither null nor an array. */
export function isJsonObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Length of a text in UTF-8, bytes. A lone surrogate counts 3, as encoders replace it. */
export function utf8Length(text: string): number {
  let bytes = 0;
  for (const character of text) {
    const point = character.codePointAt(0) ?? 0;
    bytes += point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
  }
  return bytes;
}

/**
 * The canonical text of plain JSON; undefined as soon as anything else is met or it is too deep. Nearly every value that is
 * ever examined is plain, and this takes a third of the time of the walk that can say what is wrong.
 */
function plainText(value: unknown, depth: number): string | undefined {
  if (depth > allowedDepth || notJson(value) !== undefined) return undefined;
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  if (Array.isArray(value)) {
    const items: string[] = [];
    for (const item of value) {
      const text = plainText(item, depth + 1);
      if (text === undefined) return undefined;
      items.push(text);
    }
    return `[${items.join()}]`;
  }
  let fields = "";
  for (const key of Object.keys(value).sort()) {
    const text = plainText((value as Record<string, unknown>)[key], depth + 1);
    if (text === undefined) return undefined;
    fields += `${fields === "" ? "" : ","}${JSON.stringify(key)}:${text}`;
  }
  return `{${fields}}`;
}

type Visit = { value: unknown; depth: number; step: string; parent?: Visit };

// U+0001 cannot stand unescaped in JSON text, so a mark is never mistaken for data.
const mark = "\u0001";
// Only a value that contains itself gets this deep: a decoder's own stack ends earlier.
const deepestWalk = 10_000;

function scheduleChildren(work: Array<string | Visit>, parent: Visit, value: object): void {
  const child = (step: string, inner: unknown): Visit => ({ value: inner, depth: parent.depth + 1, step, parent });
  if (Array.isArray(value)) {
    work.push("]");
    for (let index = value.length - 1; index >= 0; index--) {
      work.push(child(String(index), value[index]));
      if (index > 0) work.push(",");
    }
    work.push("[");
    return;
  }
  const prototype: unknown = isPlain(value) ? undefined : Object.getPrototypeOf(value);
  work.push("}");
  const keys = Object.keys(value).sort();
  for (const [position, key] of [...keys.entries()].reverse()) {
    work.push(child(key, (value as Record<string, unknown>)[key]));
    work.push(`${position > 0 ? "," : ""}${JSON.stringify(key)}:`);
  }
  work.push("{");
  if (typeof prototype === "object") work.push(child("prototype", prototype));
}

function notJson(value: unknown): string | undefined {
  if (value === null || typeof value === "boolean" || typeof value === "string") return undefined;
  if (typeof value === "number") return Number.isFinite(value) ? undefined : `the number ${value}`;
  if (typeof value !== "object") return value === undefined ? "an undefined value" : `a ${typeof value}`;
  if (value instanceof Uint8Array) return "a run of bytes";
  if (Array.isArray(value)) return undefined;
  if (!isPlain(value)) return "an object that is not plain";
  return Object.hasOwn(value, "__proto__") ? "a key that is not allowed, __proto__" : undefined;
}

// Compares by shape, not by identity of Object.prototype: values may come from another realm.
function isPlain(value: object): boolean {
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === null || Object.getPrototypeOf(prototype) === null;
}

function leafText(value: unknown): string {
  if (notJson(value) === undefined && typeof value !== "object") return JSON.stringify(value);
  return value === null ? "null" : `${mark}${typeof value}(${typeof value === "object" ? "" : String(value)})`;
}

function pathOf(visit: Visit): string {
  const steps: string[] = [];
  for (let at: Visit | undefined = visit; at?.parent !== undefined; at = at.parent) steps.push(at.step);
  return steps.reverse().join(".");
}
