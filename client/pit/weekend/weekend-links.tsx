import { A } from "@solidjs/router";
import { Show } from "solid-js";
import { data } from "#client/text/data.ts";
import { weekend as words } from "#client/text/weekend.ts";

/** To change the weekend that the board shows, and to enter a new one: the main act while there is none. */
export function WeekendLinks(props: { weekendId: string | undefined }) {
  return (
    <>
      <Show when={props.weekendId}>
        {(weekendId) => (
          <A href={`/pit/weekend/${weekendId()}/edit`} class="button">
            {words.changeLink}
          </A>
        )}
      </Show>
      <A href="/pit/weekend/new" class={props.weekendId === undefined ? "button main" : "button"}>
        {words.newLink}
      </A>
      <A href="/data" class="button">
        {data.link}
      </A>
    </>
  );
}
