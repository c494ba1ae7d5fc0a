import { createEffect, For, type JSX, on, Show } from "solid-js";
import { rainLock } from "#client/text/rain-lock.ts";
import type { RainLock } from "./create-rain-lock.ts";

export interface LockedRow {
  readonly name: string;
  readonly value: string;
  /** What has to be known with it. */
  readonly lines: readonly string[];
}

export interface LockedGroup {
  readonly title: string;
  readonly rows: readonly LockedRow[];
}

/** Locks the screen; the focus comes back to it when the screen is open again. */
export function RainLockButton(props: { lock: RainLock }) {
  let button: HTMLButtonElement | undefined;
  createEffect(
    on(props.lock.isLocked, (isLocked) => !isLocked && queueMicrotask(() => button?.focus({ preventScroll: true })), {
      defer: true,
    }),
  );
  return (
    <button
      ref={button}
      type="button"
      // The key that was held to open goes on repeating, here.
      onKeyDown={(event) => event.repeat && event.preventDefault()}
      onClick={() => props.lock.lock()}
    >
      {rainLock.lock}
    </button>
  );
}

/** A screen that can be locked: then its values are shown large, and the screen itself keeps what was typed, out of reach. */
export function RainLocked(props: {
  lock: RainLock;
  title: string;
  groups: readonly LockedGroup[];
  /** What can hurt at the work that these values are for. */
  caution?: JSX.Element;
  children: JSX.Element;
}) {
  return (
    <>
      <div hidden={props.lock.isLocked()}>{props.children}</div>
      <Show when={props.lock.isLocked()}>
        <div class="stack">
          <h1>{props.title}</h1>
          <OpenBar lock={props.lock} />
          {props.caution}
          <For each={props.groups}>
            {(group) => (
              <section class="card">
                <h2>{group.title}</h2>
                <dl class="locked-values">
                  <For each={group.rows}>
                    {(row) => (
                      <div>
                        <dt>{row.name}</dt>
                        <dd class="locked-value">{row.value}</dd>
                        <For each={row.lines}>{(line) => <dd>{line}</dd>}</For>
                      </div>
                    )}
                  </For>
                </dl>
              </section>
            )}
          </For>
        </div>
      </Show>
    </>
  );
}

function OpenBar(props: { lock: RainLock }) {
  const sentences = { holding: rainLock.holding, short: rainLock.short, confirm: rainLock.confirm };
  const said = () => {
    const state = props.lock.state();
    return state === "open" || state === "locked" ? rainLock.locked : sentences[state];
  };
  return (
    <div class="rain-lock-bar">
      <button
        ref={(button) => queueMicrotask(() => button.focus({ preventScroll: true }))}
        type="button"
        class="main hold-to-open"
        classList={{ held: props.lock.state() === "holding" }}
        {...props.lock.hold}
      >
        {rainLock.open}
      </button>
      <output aria-live="polite">{said()}</output>
      <Show when={props.lock.state() === "confirm"}>
        <button type="button" onClick={() => props.lock.open()}>
          {rainLock.confirmed}
        </button>
      </Show>
    </div>
  );
}
