import { Index } from "solid-js";

/** Room to write by hand. */
export function RuledLines(props: { title: string; count: number }) {
  return (
    <section class="print-notes">
      <h3>{props.title}</h3>
      <Index each={Array.from({ length: props.count })}>{() => <div class="print-rule" aria-hidden="true" />}</Index>
    </section>
  );
}
