/**
 * Tyre pressure for another load and another temperature.
 *
 *   load = p_g A      at the same contact area A:  p_g2 = p_g1 load₂ / load₁
 *
 * p_g gauge pressure, Pa. A tyre carries its load as pressure on the area that
 * touches the ground, so the same area means the same squash. Source: balance
 * of forces on a thin casing; the casing's own stiffness is left out, so this
 * is for changes of some 20 %. The temperature follows gas.ts at fixed volume.
 */
import { type Force, type GaugePressure, gaugePascals } from "#core/quantity/quantity.ts";
import { type GasState, gaugeToSetNow } from "./gas.ts";
import { positive } from "./input.ts";
import { notPossible, type Possible, possible } from "./problem.ts";

/** The largest pressures (gauge, Pa) marked on tyre and rim. The lower of the two holds (ISO 5775-1, 16 CFR 1512.10: marked on the part). */
export interface MarkedMaximum {
  readonly tyre: GaugePressure;
  readonly rim: GaugePressure;
}

/** The lower of the two marked maxima (gauge, Pa; both > 0). */
export function lowerMarkedMaximum(marked: MarkedMaximum): GaugePressure {
  return gaugePascals(
    Math.min(
      positive("Marked maximum of the tyre in Pa", marked.tyre),
      positive("Marked maximum of the rim in Pa", marked.rim),
    ),
  );
}

/** The gauge pressure (Pa) with which a tyre squashes under `loadAfter` as it did with `pressure` under `loadBefore` (N, > 0). */
export function tyrePressureForLoad(change: {
  readonly pressure: GaugePressure;
  readonly loadBefore: Force;
  readonly loadAfter: Force;
}): GaugePressure {
  const pressure = positive("Tyre pressure in Pa", change.pressure);
  return gaugePascals(
    (pressure * positive("Load after in N", change.loadAfter)) / positive("Load before in N", change.loadBefore),
  );
}

/**
 * The gauge pressure (Pa) to set `now` so that the tyre has `wanted` (gauge, Pa, > 0) at `wantedAt`.
 * "above marked maximum" when it would exceed the lower marked maximum now or then; "below ambient
 * pressure" when no pump could set it.
 */
export function tyrePressureToSetNow(wish: {
  readonly wanted: GaugePressure;
  readonly wantedAt: GasState;
  readonly now: GasState;
  readonly marked: MarkedMaximum;
}): Possible<GaugePressure> {
  const maximum = lowerMarkedMaximum(wish.marked);
  const set = gaugeToSetNow({
    wanted: positive("Tyre pressure in Pa", wish.wanted),
    wantedAt: wish.wantedAt,
    now: wish.now,
  });
  if (Math.max(set, wish.wanted) > maximum) return notPossible("above marked maximum");
  return set < 0 ? notPossible("below ambient pressure") : possible(set);
}
