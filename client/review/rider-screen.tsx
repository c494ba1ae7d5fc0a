import { A } from "@solidjs/router";
import { Match, Show, Switch } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { common } from "#client/text/common.ts";
import { review } from "#client/text/review.ts";
import { Choice } from "#client/widgets/choice.tsx";
import { Problem } from "#client/widgets/problem.tsx";
import { courseTypes } from "#core/team/course-type.ts";
import { createApproval } from "./create-approval.ts";
import { createRiderReview } from "./create-rider-review.ts";
import { ReviewNav } from "./review-nav.tsx";
import { Versions } from "./versions.tsx";
import { WeekendProposal } from "./weekend-proposal.tsx";

/** One rider: this weekend's setup against the baseline, and all versions of it. */
export function RiderScreen() {
  const device = useDevice();
  const rider = createRiderReview();
  const approval = createApproval(device);
  return (
    <>
      <ReviewNav />
      <Switch fallback={<p>{review.rider.unknown}</p>}>
        <Match when={!device.loaded()}>
          <p>{common.loading}</p>
        </Match>
        <Match when={rider.mounted()}>
          {(mounted) => (
            <div class="stack">
              <h1>{mounted().rider.name}</h1>
              <Choice
                legend={review.rider.courseType}
                required
                options={courseTypes}
                labelOf={(type) => common.courseTypes[type]}
                value={rider.type()}
                onChange={(type) => type !== undefined && rider.choose({ type })}
              />
              <Show when={rider.dominant()}>{(sentence) => <p class="dominant">{sentence()}</p>}</Show>
              <div aria-live="polite">
                <Show when={approval.done()}>
                  {(sentence) => (
                    <div class="done row">
                      <p>{sentence()}</p>
                      <Show when={approval.undo()}>
                        {(undo) => (
                          <button type="button" onClick={() => undo()()}>
                            {approval.undoLabel()}
                          </button>
                        )}
                      </Show>
                    </div>
                  )}
                </Show>
              </div>
              <Problem sentence={approval.problem()} />
              <div class="rider-review">
                <WeekendProposal rider={rider} approval={approval} />
                <Versions mounted={mounted()} type={rider.type()} versions={rider.versions()} approval={approval} />
              </div>
              <A class="button" href="/review">
                {review.rider.all}
              </A>
            </div>
          )}
        </Match>
      </Switch>
    </>
  );
}
