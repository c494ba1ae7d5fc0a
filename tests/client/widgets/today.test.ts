import { afterEach, expect, test, vi } from "vitest";
import { today } from "#client/widgets/today.ts";

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllEnvs();
});

test.each([
  ["Pacific/Auckland", "2026-05-28T20:30Z"],
  ["America/Los_Angeles", "2026-05-30T03:30Z"],
])("today is the day where the device is, not the one in Greenwich: %s", (zone, moment) => {
  vi.stubEnv("TZ", zone);
  vi.useFakeTimers({ toFake: ["Date"], now: new Date(moment) });
  expect(today()).toBe("2026-05-29");
});
