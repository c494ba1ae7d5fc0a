/** French texts of the chart of a spring's force. */
import type { forceChart as english } from "../english/force-chart.ts";
import type { Said } from "../spoken.ts";

export const forceChart: Said<typeof english> = {
  title: "Force sur la course",
  now: "maintenant",
  afterwards: "après",
  stroke: "Course, mm",
  force: "Force, N",
  sag: "Sag",
  travel: "Débattement",
  described: (now: string, then: string, stroke: string) =>
    `Force du ressort sur sa course de ${stroke}, en roulant. Maintenant : ${now}. Après : ${then}.`,
  same: "Les deux lignes sont à moins de 1 N l’une de l’autre.",
  difference: (newtons: number, stroke: string) =>
    `Plus grand écart à ${stroke} : ${Math.abs(newtons)} N de ${newtons > 0 ? "plus" : "moins"} après.`,
  at: (share: string, force: string) => `${force} ${share}`,
  shares: { half: "à mi-course", nineTenths: "à 90 %", full: "en fin de course" },
  newtons: (value: number) => `${value} N`,
  millimetres: (value: number) => `${value} mm`,
};
