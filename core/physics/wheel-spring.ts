/**
 * A shock's spring as the wheel feels it through a linkage.
 *
 *   F_w = F_s / LR      k_w = k_s / LR² − F_s (dLR/ds) / LR³      E_w = E_s
 *
 * w at the wheel, s at the shock; dLR/ds = LR dLR/dw. Source: virtual work, and
 * its derivative. The linkage itself has no mass and no friction here.
 */
import { type Length, metres, newtons, newtonsPerMetre } from "#core/quantity/quantity.ts";
import { withinStroke } from "./input.ts";
import type { Linkage } from "./linkage.ts";
import type { Spring } from "./spring.ts";

/** `spring` of the shock seen at the wheel. Its stroke is the wheel's travel, as far as the shock's own stroke allows. */
export function wheelSpring(spring: Spring, linkage: Linkage): Spring {
  const travel =
    spring.stroke < linkage.shockStroke ? linkage.wheelTravelAt(spring.stroke) : metres(linkage.wheelTravel);
  const strokeAt = (wheelTravel: Length): Length => {
    withinStroke(wheelTravel, travel);
    return metres(Math.min(spring.stroke, linkage.shockStrokeAt(wheelTravel)));
  };
  return {
    stroke: travel,
    force(wheelTravel) {
      return newtons(spring.force(strokeAt(wheelTravel)) / linkage.leverageRatioAt(wheelTravel));
    },
    rate(wheelTravel) {
      const stroke = strokeAt(wheelTravel);
      const softening = spring.force(stroke) * linkage.leverageSlopeAt(wheelTravel);
      return newtonsPerMetre((spring.rate(stroke) - softening) / linkage.leverageRatioAt(wheelTravel) ** 2);
    },
    energy: (wheelTravel) => spring.energy(strokeAt(wheelTravel)),
  };
}
