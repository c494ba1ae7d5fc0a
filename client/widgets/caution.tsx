import type { JSX } from "solid-js";
import { common } from "#client/text/common.ts";

/** A caution where the work can hurt somebody: always in view, never a tint alone. */
export function Caution(props: { children: JSX.Element }) {
  return (
    <p class="caution" role="note">
      <strong>{common.caution}</strong> {props.children}
    </p>
  );
}
