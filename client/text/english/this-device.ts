/** English texts about how safe what is on this device is. */
export const thisDevice = {
  title: "This device",
  promise: {
    "not asked": "The browser has not promised yet to keep what is on this device. It is asked with your first entry.",
    granted: "The browser has promised to keep what is on this device, also when space is short.",
    "not granted":
      "The browser has not promised to keep what is on this device. It may delete it when space is short; on iPhone and iPad it does after 7 days without opening Pitslate.",
    "not offered":
      "This browser gives no promise to keep what is on this device: the address begins with http://, or the window is private, or the browser is old. It may delete it when space is short, after 7 days without opening Pitslate on iPhone and iPad, and when a private window is closed.",
  },
  install:
    "Put Pitslate on the home screen, by the browser's menu or, on iPhone and iPad, by Share. There it begins empty and gets the team from the pit laptop.",
  save: "At the end of a day, save everything to a file: Hand over without a network.",
  short: (used: string, left: string) =>
    `Space on this device is short: about ${left} MB left, and Pitslate uses ${used} MB. Make room before the day begins, or entries may not be saved here.`,
} as const;
