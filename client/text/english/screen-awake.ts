/** English texts about the screen that stays on. */
export const screenAwake = {
  on: "The screen stays on while this list is open.",
  asking: "The screen may go dark.",
  refused: "The browser does not keep the screen on now, perhaps to save power: it may go dark.",
  unavailable: "This browser cannot keep the screen on: set a longer time in the device's own settings.",
} as const;
