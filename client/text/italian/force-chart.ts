/** Italian texts of the chart of a spring's force. */
import type { forceChart as english } from "../english/force-chart.ts";
import type { Said } from "../spoken.ts";

export const forceChart: Said<typeof english> = {
  title: "Forza lungo la corsa",
  now: "adesso",
  afterwards: "dopo",
  stroke: "Corsa, mm",
  force: "Forza, N",
  sag: "Sag",
  travel: "Escursione",
  described: (now: string, then: string, stroke: string) =>
    `Forza della molla lungo la corsa di ${stroke}, in marcia. Adesso: ${now}. Dopo: ${then}.`,
  same: "Le due linee distano meno di 1 N.",
  difference: (newtons: number, stroke: string) =>
    `Distanza massima a ${stroke}: dopo ${Math.abs(newtons)} N in ${newtons > 0 ? "più" : "meno"}.`,
  at: (share: string, force: string) => `${force} ${share}`,
  shares: { half: "a metà", nineTenths: "al 90 %", full: "in fondo" },
  newtons: (value: number) => `${value} N`,
  millimetres: (value: number) => `${value} mm`,
};
