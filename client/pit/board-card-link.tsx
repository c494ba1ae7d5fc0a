import { A } from "@solidjs/router";
import { For, Show } from "solid-js";
import { pit } from "#client/text/pit.ts";
import type { BoardCard } from "./board-cards.ts";

/** One rider on the board; the whole card leads to the bench. */
export function BoardCardLink(props: { card: BoardCard; query: string }) {
  const jobs = () => jobLines(props.card);
  return (
    <li>
      <A
        href={`/pit/rider/${props.card.mounted.riderId}${props.query}`}
        class={props.card.disputed > 0 ? "card alarm pit-card" : "card pit-card"}
      >
        <span class="pit-card-head">
          <strong class="pit-card-name">{props.card.mounted.rider.name}</strong>
          <Show when={props.card.mounted.rider.plate}>
            {(plate) => <span class="tag">{pit.board.plate(plate())}</span>}
          </Show>
        </span>
        <span class="small">{props.card.mounted.bike.name}</span>
        <For each={jobs()}>{(job) => <span class="pit-card-job">{job}</span>}</For>
        <Show when={!props.card.open && props.card.toSet !== undefined}>
          <span>{pit.board.nothing}</span>
        </Show>
      </A>
    </li>
  );
}

function jobLines(card: BoardCard): readonly string[] {
  return [
    ...(card.disputed > 0 ? [pit.board.disputed(card.disputed)] : []),
    ...(card.reported > 0 ? [pit.board.reported(card.reported)] : []),
    ...(card.toAnswer > 0 ? [pit.board.toAnswer(card.toAnswer)] : []),
    ...(card.partsOverdue > 0 ? [pit.board.partsOverdue(card.partsOverdue)] : []),
    ...(card.partsDue > 0 ? [pit.board.partsDue(card.partsDue)] : []),
    ...(card.toSet === undefined ? [pit.board.notWorkedOut] : card.toSet > 0 ? [pit.board.toSet(card.toSet)] : []),
  ];
}
