/** German texts of the chart of a spring's force. */
import type { forceChart as model } from "../english/force-chart.ts";
import type { Said } from "../spoken.ts";

export const forceChart: Said<typeof model> = {
  title: "Kraft über den Hub",
  now: "jetzt",
  afterwards: "danach",
  stroke: "Hub, mm",
  force: "Kraft, N",
  sag: "Sag",
  travel: "Federweg",
  described: (now: string, then: string, stroke: string) =>
    `Kraft der Feder über ihren Hub von ${stroke}, während der Fahrt. Jetzt: ${now}. Danach: ${then}.`,
  same: "Die beiden Linien liegen weniger als 1 N auseinander.",
  difference: (newtons: number, stroke: string) =>
    `Größter Abstand bei ${stroke}: danach ${Math.abs(newtons)} N ${newtons > 0 ? "mehr" : "weniger"}.`,
  at: (share: string, force: string) => `${force} bei ${share}`,
  shares: { half: "halbem Hub", nineTenths: "90 %", full: "vollem Hub" },
  newtons: (value: number) => `${value} N`,
  millimetres: (value: number) => `${value} mm`,
};
