import { For } from "solid-js";
import { common } from "#client/text/common.ts";
import { sentBack } from "#client/text/sent-back.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import type { CourseType } from "#core/team/course-type.ts";
import type { SentBack } from "#core/team/sent-back.ts";
import { formatMoment } from "./format.ts";
import { memberName } from "./names.ts";

/** One note, with the record that holds it. */
export interface SendBackNote {
  readonly type: CourseType;
  readonly record: LedgerRecord<SentBack>;
}

/** What a manager wrote to the setup that is on the bike: for which course type, who, when and what. */
export function SendBackNotes(props: { ledger: Ledger; sendBacks: readonly SendBackNote[] }) {
  return (
    <For each={props.sendBacks}>
      {({ type, record }) => (
        <section class="card stack sent-back">
          <h2>{sentBack.title(common.courseTypes[type])}</h2>
          <blockquote>{record.value?.note}</blockquote>
          <p>{sentBack.by(memberName(props.ledger, record.by), formatMoment(record.at))}</p>
          <p class="small">{sentBack.until}</p>
        </section>
      )}
    </For>
  );
}
