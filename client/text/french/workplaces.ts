/** French texts that come with the first workplace that is opened. */
export { baselineReview } from "./baseline-review.ts";
export { data } from "./data.ts";
export { forceChart } from "./force-chart.ts";
export { handOffCodes } from "./hand-off-codes.ts";
export { moments } from "./moments.ts";
export { pit } from "./pit.ts";
export { review } from "./review.ts";
export { riderDetails } from "./rider-details.ts";
export { rulesText } from "./rules.ts";
export { sentBack } from "./sent-back.ts";
export { trackside } from "./trackside.ts";
export { trade } from "./trade.ts";
export { weekend } from "./weekend.ts";
export { whoHas } from "./who-has.ts";
export { whyNot } from "./why-not.ts";
