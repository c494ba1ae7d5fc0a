import { render } from "solid-js/web";
import { afterEach, expect, test } from "vitest";
import { WorkCautions } from "#client/pit/work-cautions.tsx";

let leave: (() => void) | undefined;
afterEach(() => leave?.());

function open(always?: boolean): void {
  leave?.();
  leave = render(() => <WorkCautions always={always} />, document.body);
}
const said = (): string => document.body.textContent ?? "";
const press = (): void => document.querySelector("button")?.click();

test("cautions can be folded away, the title stays, and one press shows them again", () => {
  open();
  expect(said()).toContain("never open a damper");
  press();
  expect(said()).not.toContain("never open a damper");
  expect(said()).toContain("Before you touch the bike");
  press();
  expect(said()).toContain("never open a damper");
});

test("they are folded only for the moment: a bench that is opened again has them in view", () => {
  open();
  press();
  open();
  expect(said()).toContain("never open a damper");
});

test("where nothing can be pressed they stay in view", () => {
  open(true);
  expect(said()).toContain("never open a damper");
  expect(document.querySelector("button")).toBeNull();
});
