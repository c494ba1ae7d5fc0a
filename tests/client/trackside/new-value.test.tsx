import { render } from "solid-js/web";
import { afterEach, expect, test } from "vitest";
import type { AdjusterView } from "#client/trackside/bike-view.ts";
import { NewValue } from "#client/trackside/new-value.tsx";
import { mountedAdjuster } from "#core/team/roster.ts";
import { riderBike } from "#tests/builders/bike.ts";

let close: (() => void) | undefined;
afterEach(() => {
  close?.();
  document.body.replaceChildren();
});

test("what is typed and refused is not saved as the value before it: the field is in focus, with what is allowed", () => {
  const saved: (number | undefined)[] = [];
  const found = mountedAdjuster(riderBike().parts, "fork.main-pressure");
  if (!found) throw new Error("The builder's bike has no fork pressure.");
  const adjuster: AdjusterView = {
    path: "fork.main-pressure",
    found,
    value: "60 psi",
    number: 60,
    readAt: undefined,
    standing: undefined,
    now: "60 psi",
    claims: [],
  };
  close = render(() => <NewValue adjuster={adjuster} onSave={(value) => saved.push(value)} />, document.body);
  const field = document.querySelector("input");
  const save = document.querySelector<HTMLElement>("button.main");
  if (!field || !save) throw new Error("There is no field, or no button to save.");
  const type = (text: string): void => {
    field.value = text;
    field.dispatchEvent(new Event("change", { bubbles: true }));
  };
  type("640");
  save.click();
  expect(saved).toEqual([]);
  expect(document.activeElement).toBe(field);
  expect(document.body.textContent).toContain("20 to 110 psi");
  type("64");
  save.click();
  expect(saved).toEqual([64]);
});
