/** Spanish texts of the chart of a spring's force. */
import type { forceChart as model } from "../english/force-chart.ts";
import type { Said } from "../spoken.ts";

export const forceChart: Said<typeof model> = {
  title: "Fuerza a lo largo de la carrera",
  now: "ahora",
  afterwards: "después",
  stroke: "Carrera, mm",
  force: "Fuerza, N",
  sag: "Sag",
  travel: "Recorrido",
  described: (now: string, then: string, stroke: string) =>
    `Fuerza del muelle a lo largo de su carrera de ${stroke}, rodando. Ahora: ${now}. Después: ${then}.`,
  same: "Las dos líneas se separan menos de 1 N.",
  difference: (newtons: number, stroke: string) =>
    `Donde más se separan, a ${stroke}: ${Math.abs(newtons)} N ${newtons > 0 ? "más" : "menos"} después.`,
  at: (share: string, force: string) => `${force} ${share}`,
  shares: { half: "a la mitad", nineTenths: "al 90 %", full: "al final" },
  newtons: (value: number) => `${value} N`,
  millimetres: (value: number) => `${value} mm`,
};
