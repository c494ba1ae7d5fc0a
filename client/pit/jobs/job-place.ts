/** Where in the pit the work on a rider's bike is done. */

/** The path of a part of the rider's page; the address of the session is added by the screen. */
export function riderPlace(riderId: string, view: "bench" | "feedback" = "bench"): string {
  return view === "bench" ? `/pit/rider/${riderId}` : `/pit/rider/${riderId}?view=${view}`;
}
