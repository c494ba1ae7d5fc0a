import type { JSX } from "solid-js";

/** A widget with its label in view; the widget carries the same label for assistive technology. */
export function Field(props: { label: string; children: JSX.Element }) {
  return (
    <div class="pit-field">
      <span class="pit-field-label" aria-hidden="true">
        {props.label}
      </span>
      {props.children}
    </div>
  );
}
