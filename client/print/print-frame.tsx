import { A } from "@solidjs/router";
import { createMemo, createSignal, type JSX, onCleanup, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { common } from "#client/text/common.ts";
import { print } from "#client/text/print.ts";
import { Choice } from "#client/widgets/choice.tsx";
import type { ChosenPrint } from "./create-chosen-print.ts";
import { ageLines } from "./occasion-lines.ts";
import { papers, type Way } from "./paper.ts";
import { PrintPicker } from "./print-picker.tsx";

/** A page to be printed: on the screen with the choice of what and on which paper, on paper alone. */
export function PrintFrame(props: {
  chosen: ChosenPrint;
  title: string;
  way: Way;
  back: { href: string; text: string };
  /** Whether the page is about one session of the weekend. */
  ofSession: boolean;
  /** Whether it tells of all riders, which a rider's device does not have. */
  ofTeam: boolean;
  children: JSX.Element;
}) {
  const device = useDevice();
  const [now, setNow] = createSignal(Date.now());
  // The time on paper is that of the press, also of one on the browser's own menu.
  const setTime = () => setNow(Date.now());
  addEventListener("beforeprint", setTime);
  onCleanup(() => removeEventListener("beforeprint", setTime));
  const wasLoaded = createMemo((before: boolean) => before || device.loaded(), false);
  const age = createMemo(() => ageLines(device.ledger(), now(), device.member()?.name ?? ""));
  const mayRead = () => !props.ofTeam || device.member()?.role !== "rider";
  return (
    <Show when={wasLoaded()} fallback={<p>{common.loading}</p>}>
      <Show
        when={device.member() && mayRead()}
        fallback={
          <div class="stack">
            <p>{device.member() ? print.forTeam : print.forWhom}</p>
            <A href="/" class="button main">
              {print.who}
            </A>
          </div>
        }
      >
        <div class="stack print-controls">
          <h1>{props.title}</h1>
          <PrintPicker chosen={props.chosen} ofSession={props.ofSession} />
          <Choice
            legend={print.paper}
            required
            options={papers}
            labelOf={(paper) => paper}
            value={props.chosen.paper()}
            onChange={(paper) => paper !== undefined && props.chosen.choosePaper(paper)}
          />
          <p>{print.hint}</p>
          <div class="row">
            <button type="button" class="main" onClick={() => window.print()}>
              {print.print}
            </button>
            <A href={props.back.href} class="button">
              {props.back.text}
            </A>
          </div>
        </div>
        <Show when={props.chosen.programme()} fallback={<p>{print.noWeekend}</p>}>
          {/* The page is as wide as its paper: on a narrow screen it is moved, also by the keys. */}
          <section class="print-desk" aria-label={print.preview} tabindex="0">
            <article
              class={`print-page print-${props.chosen.paper()} print-${props.way}`}
              data-entries={device.ledger().size}
            >
              {props.children}
              <footer class="print-age">
                <p>{age()[0]}</p>
                <p>{age()[1]}</p>
              </footer>
            </article>
          </section>
        </Show>
      </Show>
    </Show>
  );
}
