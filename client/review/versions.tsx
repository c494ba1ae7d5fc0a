import { For, Show } from "solid-js";
import { common } from "#client/text/common.ts";
import { review } from "#client/text/review.ts";
import type { CourseType } from "#core/team/course-type.ts";
import type { RiderBike } from "#core/team/roster.ts";
import type { Approval } from "./create-approval.ts";
import { VersionCard } from "./version-card.tsx";
import type { VersionView } from "./versions-view.ts";

export interface VersionsProps {
  readonly mounted: RiderBike;
  readonly type: CourseType;
  readonly versions: readonly VersionView[];
  readonly approval: Approval;
}

/** Every version there ever was, newest first, side by side where there is room. */
export function Versions(props: VersionsProps) {
  const isDisputed = () => props.versions.some(({ standing }) => standing === "in dispute");
  const rows = () => Math.max(1, ...props.versions.map(({ values }) => values.length));
  return (
    <section class="stack">
      <h2>{review.versions.title}</h2>
      <Show when={isDisputed()}>
        <p class="problem">{review.versions.disputeHint}</p>
      </Show>
      <Show when={props.versions.length === 0}>
        <p>{review.versions.none(common.courseTypes[props.type])}</p>
      </Show>
      <div class="versions" style={{ "--rows": rows() }}>
        <For each={props.versions}>
          {(version) => (
            <VersionCard
              version={version}
              onKeep={(value) => props.approval.keep(props.mounted.riderId, props.type, value)}
              onGoBack={(value) => props.approval.goBack(props.mounted.riderId, props.type, value, version.number)}
            />
          )}
        </For>
      </div>
    </section>
  );
}
