import { createMemo, For, Show } from "solid-js";
import { courseProfile as words } from "#client/text/course-profile.ts";
import { FileField } from "#client/widgets/file-field.tsx";
import { formatMegabytes, formatNumber } from "#client/widgets/format.ts";
import { Problem } from "#client/widgets/problem.tsx";
import { reversedProfile } from "#core/course/course-facts.ts";
import type { CourseFormState } from "../create-course-form.ts";
import { createCourseFile, largestGpx } from "./create-course-file.ts";
import { ProfileChart } from "./profile-chart.tsx";
import { profileView } from "./profile-view.ts";
import { TrackChoice } from "./track-choice.tsx";

/** The profile of the course: from a file, shown before it is saved, with the steep part that it proposes. */
export function CourseProfileCard(props: { form: CourseFormState }) {
  const profile = createMemo(() => props.form.draft().profile);
  const file = createCourseFile({ profile, setProfile: (next) => props.form.setProfile(next) });
  const view = createMemo(() => {
    const known = profile();
    return known && profileView(known, props.form.draft().sections);
  });
  const refused = () => {
    const now = file.state();
    return now.state === "refused" ? now.sentence : undefined;
  };
  const turn = (): void => {
    const known = profile();
    if (known) props.form.setProfile(reversedProfile(known));
  };
  return (
    <section class="card stack course-profile">
      <h2>{words.title}</h2>
      <FileField
        label={words.choose}
        hint={words.chooseHint(formatMegabytes(largestGpx))}
        accept=".gpx,application/gpx+xml,application/xml,text/xml"
        onFile={(chosen) => void file.choose(chosen)}
      />
      <div aria-live="polite" class="stack">
        <Show when={file.state().state === "reading"}>
          <progress aria-label={words.reading} />
        </Show>
        <Problem sentence={refused()} />
        <TrackChoice file={file} />
      </div>
      <Show when={view()} fallback={<p>{words.none}</p>}>
        {(shown) => (
          <>
            <Show when={shown().uphill}>
              {(metres) => (
                <div class="row">
                  <strong>{words.uphill(metres())}</strong>
                  <button type="button" onClick={turn}>
                    {words.turn}
                  </button>
                </div>
              )}
            </Show>
            <div class="course-profile-parts">
              <ProfileChart view={shown()} />
              <div class="stack">
                <dl class="course-facts">
                  <For each={shown().facts}>
                    {({ name, value }) => (
                      <div>
                        <dt>{name}</dt>
                        <dd>{value}</dd>
                      </div>
                    )}
                  </For>
                </dl>
                <p>
                  <strong>{shown().proposal.sentence}</strong> {words.rule}
                </p>
                <Show
                  when={props.form.draft().mix.steep !== shown().proposal.part}
                  fallback={<p role="status">{words.isTaken(formatNumber(shown().proposal.part))}</p>}
                >
                  <button type="button" class="main" onClick={() => props.form.setPart("steep", shown().proposal.part)}>
                    {words.take(formatNumber(shown().proposal.part))}
                  </button>
                </Show>
              </div>
            </div>
            <Show when={file.state().state !== "read"}>
              <button type="button" onClick={() => props.form.setProfile(undefined)}>
                {words.remove}
              </button>
            </Show>
          </>
        )}
      </Show>
    </section>
  );
}
