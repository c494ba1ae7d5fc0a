import { expect, test } from "vitest";
import { makeOneTouch } from "#client/widgets/one-touch.ts";

test("a second touch that comes at once is not meant, and the next one that is meant counts", () => {
  const isMeant = makeOneTouch();
  expect([1000, 1150, 1699, 1700, 1900].map(isMeant)).toEqual([true, false, false, true, false]);
});
