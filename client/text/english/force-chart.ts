/** English texts of the chart of a spring's force. */
export const forceChart = {
  title: "Force over the stroke",
  now: "now",
  afterwards: "then",
  stroke: "Stroke, mm",
  force: "Force, N",
  sag: "Sag",
  travel: "Travel",
  /** For who cannot see the chart. */
  described: (now: string, then: string, stroke: string) =>
    `Force of the spring over its stroke of ${stroke}, while riding. Now: ${now}. Then: ${then}.`,
  same: "The two lines are less than 1 N apart.",
  difference: (newtons: number, stroke: string) =>
    `Furthest apart at ${stroke}: ${Math.abs(newtons)} N ${newtons > 0 ? "more" : "less"} then.`,
  at: (share: string, force: string) => `${force} at ${share}`,
  shares: { half: "half", nineTenths: "90 %", full: "the end" },
  newtons: (value: number) => `${value} N`,
  millimetres: (value: number) => `${value} mm`,
} as const;
