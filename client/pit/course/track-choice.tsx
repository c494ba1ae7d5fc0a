import { For, Show } from "solid-js";
import { courseProfile as words } from "#client/text/course-profile.ts";
import { Choice } from "#client/widgets/choice.tsx";
import { Problem } from "#client/widgets/problem.tsx";
import type { CourseFile } from "./create-course-file.ts";

/** What a file that was read holds: its tracks to choose from, what was filled in, and the way back. */
export function TrackChoice(props: { file: CourseFile }) {
  const read = () => {
    const now = props.file.state();
    return now.state === "read" ? now : undefined;
  };
  const indices = () => (read()?.names ?? []).map((_, index) => String(index));
  return (
    <Show when={read()}>
      {(shown) => (
        <>
          <p>{words.taken(shown().file)}</p>
          <Show when={shown().names.length > 1}>
            <Choice
              legend={words.track}
              required
              options={indices()}
              labelOf={(index) => shown().names[Number(index)] ?? index}
              value={String(shown().chosen)}
              onChange={(index) => props.file.pick(Number(index))}
            />
          </Show>
          <Problem sentence={shown().problem} />
          <For each={shown().notes}>{(note) => <p>{note}</p>}</For>
          <div>
            <button type="button" onClick={() => props.file.leave()}>
              {words.leave}
            </button>
          </div>
        </>
      )}
    </Show>
  );
}
