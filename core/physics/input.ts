/** The gate of this room: each check returns its value or throws a PhysicsError that names it in a sentence. */
import { PhysicsError } from "./problem.ts";

/** `value` when it is a finite number. `name`, with its unit, opens the sentence: "Main pressure in Pa". */
export function finite<T extends number>(name: string, value: T): T {
  if (!Number.isFinite(value))
    throw new PhysicsError("not a number", `${name} must be a number; it is ${value}.`, { [name]: value });
  return value;
}

/** `value` when it is finite and greater than 0. */
export function positive<T extends number>(name: string, value: T): T {
  if (finite(name, value) <= 0)
    throw new PhysicsError("not positive", `${name} must be greater than 0; it is ${value}.`, { [name]: value });
  return value;
}

/** `value` when it is finite and not below 0. */
export function notNegative<T extends number>(name: string, value: T): T {
  if (finite(name, value) < 0)
    throw new PhysicsError("negative", `${name} must not be below 0; it is ${value}.`, { [name]: value });
  return value;
}

/** `value` when it is finite and from `low` to `high`, both included. */
export function within<T extends number>(name: string, value: T, low: number, high: number): T {
  if (finite(name, value) < low || value > high)
    throw new PhysicsError("out of range", `${name} must be from ${low} to ${high}; it is ${value}.`, {
      [name]: value,
      low,
      high,
    });
  return value;
}

/** `value` when it is a whole number of things, 0 or more. */
export function count(name: string, value: number): number {
  if (!Number.isInteger(notNegative(name, value)))
    throw new PhysicsError("out of range", `${name} must be a whole number; it is ${value}.`, { [name]: value });
  return value;
}

/** Throws unless `stroke` lies from 0 (full extension) to `full`, m. One comparison, because force curves call it often. */
export function withinStroke(stroke: number, full: number): void {
  if (stroke >= 0 && stroke <= full) return;
  finite("Stroke in m", stroke);
  const millimetres = (value: number) => `${(value * 1000).toFixed(1)} mm`;
  throw new PhysicsError(
    "beyond stroke",
    `Stroke must be from 0 to ${millimetres(full)}, the full stroke; it is ${millimetres(stroke)}.`,
    { stroke, full },
  );
}
