import type { JSX } from "solid-js";

/** A table that may be wider than the screen: it scrolls by itself, by the keys too. */
export function TableScroll(props: { label: string; children: JSX.Element }) {
  return (
    <section class="table-scroll" aria-label={props.label} tabindex="0">
      {props.children}
    </section>
  );
}
