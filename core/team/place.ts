/** Where on the bike a part sits, and at which end. */
export const places = ["fork", "shock", "front-tyre", "rear-tyre"] as const;
export type Place = (typeof places)[number];

export const ends = ["front", "rear"] as const;
export type End = (typeof ends)[number];

/** The suspension part of an end. */
export function suspensionOf(end: End): "fork" | "shock" {
  return end === "front" ? "fork" : "shock";
}

/** The tyre of an end. */
export function tyreOf(end: End): "front-tyre" | "rear-tyre" {
  return end === "front" ? "front-tyre" : "rear-tyre";
}
