import { A } from "@solidjs/router";
import { createMemo, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { common } from "#client/text/common.ts";
import { data } from "#client/text/data.ts";
import { TablesSection } from "./tables-section.tsx";
import { TeamSection } from "./team-section.tsx";
import { TimesSection } from "./times-section.tsx";
import "./data.css";

/** Where data goes out and comes in. */
export function DataScreen() {
  const device = useDevice();
  const role = () => {
    const said = device.member()?.role;
    return said === "rider" ? undefined : said;
  };
  // New riders in a file open more documents: what is shown meanwhile has to stay.
  const wasLoaded = createMemo((before: boolean) => before || device.loaded(), false);
  return (
    <div class="stack data">
      <h1>{data.title}</h1>
      <Show when={wasLoaded()} fallback={<p>{common.loading}</p>}>
        <Show
          when={role()}
          fallback={
            <>
              <p>{data.forWhom}</p>
              <A href="/" class="button main">
                {data.who}
              </A>
            </>
          }
        >
          {(is) => (
            <>
              <TimesSection />
              <TablesSection />
              <TeamSection />
              <A href={is() === "manager" ? "/review" : "/pit"} class="button">
                {data.back[is()]}
              </A>
            </>
          )}
        </Show>
      </Show>
    </div>
  );
}
