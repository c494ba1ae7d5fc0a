import type { JSX } from "solid-js";

/** A caution where the work can hurt somebody: always in view, never a tint alone. */
export function Caution(props: { children: JSX.Element }) {
  return (
    <p class="caution" role="note">
      <strong>Caution. </strong>
      {props.children}
    </p>
  );
}
