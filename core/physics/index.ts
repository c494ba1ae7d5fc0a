/**
 * The public face of the physics room: all that a bench engineer needs, with no
 * document, rider or advice behind it. The equations are in MODEL.md.
 */
export * from "./air-spring.ts";
export type { AirSpringGeometry, AirSpringSetting } from "./air-spring-part.ts";
export * from "./atmosphere.ts";
export * from "./balance.ts";
export * from "./bumper.ts";
export * from "./coil.ts";
export * from "./damping.ts";
export * from "./drop.ts";
export * from "./fit.ts";
export * from "./frequency.ts";
export * from "./friction.ts";
export * from "./gas.ts";
export * from "./linkage.ts";
export * from "./problem.ts";
export * from "./pump.ts";
export * from "./sag.ts";
export * from "./same-hit.ts";
export * from "./sizing.ts";
export * from "./spring.ts";
export * from "./tyre.ts";
export * from "./wheel-spring.ts";
