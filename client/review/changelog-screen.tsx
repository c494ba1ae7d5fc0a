import { For, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { common } from "#client/text/common.ts";
import { review } from "#client/text/review.ts";
import { AdjusterChoice } from "#client/widgets/adjuster-choice.tsx";
import { WeekendChoice } from "#client/widgets/weekend-choice.tsx";
import { ChangelogTable } from "./changelog-table.tsx";
import { createChangelog } from "./create-changelog.ts";
import { ReviewNav } from "./review-nav.tsx";

/** What was changed on which bike, by whom and why. */
export function ChangelogScreen() {
  const device = useDevice();
  const log = createChangelog();
  return (
    <>
      <ReviewNav />
      <h1>{review.changelog.title}</h1>
      <Show when={device.loaded()} fallback={<p>{common.loading}</p>}>
        <div class="filters">
          <WeekendChoice
            label={review.weekend.choose}
            weekends={log.weekendChoices()}
            value={log.weekendId()}
            onChange={(weekend) => log.choose({ weekend })}
          />
          <label class="select-field">
            <span>{review.changelog.rider}</span>
            <select onChange={(event) => log.choose({ rider: event.currentTarget.value })}>
              <option value="">{review.changelog.everybody}</option>
              <For each={log.riders()}>
                {(mounted) => (
                  <option value={mounted.riderId} selected={mounted.riderId === log.riderId()}>
                    {mounted.rider.name}
                  </option>
                )}
              </For>
            </select>
          </label>
          <AdjusterChoice
            paths={log.adjusters()}
            value={log.path()}
            onChange={(adjuster) => log.choose({ adjuster: adjuster ?? "" })}
          />
        </div>
        <p aria-live="polite">{log.count() === 0 ? review.changelog.none : review.changelog.count(log.count())}</p>
        <Show when={log.count() > 0}>
          <ChangelogTable lines={log.lines()} />
        </Show>
        <Show when={log.next() > 0}>
          <button type="button" onClick={log.showMore}>
            {review.changelog.more(log.next())}
          </button>
        </Show>
      </Show>
    </>
  );
}
