/** English texts that come with the first workplace that is opened. */
export { baselineReview } from "./baseline-review.ts";
export { cautions } from "./cautions.ts";
export { courseProfile } from "./course-profile.ts";

export { data } from "./data.ts";
export { find } from "./find.ts";
export { forceChart } from "./force-chart.ts";
export { handOffCodes } from "./hand-off-codes.ts";
export { jobQueue } from "./job-queue.ts";
export { moments } from "./moments.ts";
export { ownActs } from "./own-acts.ts";
export { pit } from "./pit.ts";
export { print } from "./print.ts";
export { rainLock } from "./rain-lock.ts";
export { review } from "./review.ts";
export { riderDetails } from "./rider-details.ts";
export { rulesText } from "./rules.ts";
export { screenAwake } from "./screen-awake.ts";
export { sections } from "./sections.ts";
export { sentBack } from "./sent-back.ts";
export { spareBike } from "./spare-bike.ts";
export { trackside } from "./trackside.ts";
export { trade } from "./trade.ts";
export { weekend } from "./weekend.ts";
export { weekendReport } from "./weekend-report.ts";
export { whoHas } from "./who-has.ts";
export { whyNot } from "./why-not.ts";
