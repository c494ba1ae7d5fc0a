/** German texts about how safe what is on this device is. */
import type { thisDevice as model } from "../english/this-device.ts";
import type { Said } from "../spoken.ts";

export const thisDevice: Said<typeof model> = {
  title: "Dieses Gerät",
  promise: {
    "not asked":
      "Der Browser hat noch nicht zugesagt, zu behalten, was auf diesem Gerät ist. Bei deinem ersten Eintrag wird er gefragt.",
    granted: "Der Browser hat zugesagt, zu behalten, was auf diesem Gerät ist, auch wenn der Speicher knapp wird.",
    "not granted":
      "Der Browser hat nicht zugesagt, zu behalten, was auf diesem Gerät ist. Er darf es löschen, wenn der Speicher knapp wird; auf iPhone und iPad tut er es, wenn Pitslate 7 Tage nicht geöffnet wurde.",
    "not offered":
      "Dieser Browser sagt nicht zu, zu behalten, was auf diesem Gerät ist: Die Adresse beginnt mit http://, das Fenster ist privat oder der Browser ist alt. Er darf es löschen, wenn der Speicher knapp wird, auf iPhone und iPad wenn Pitslate 7 Tage nicht geöffnet wurde, und wenn ein privates Fenster geschlossen wird.",
  },
  install:
    "Leg Pitslate auf den Home-Bildschirm, über das Menü des Browsers oder auf iPhone und iPad über „Teilen“. Dort beginnt es leer und holt sich das Team vom Laptop in der Box.",
  save: "Speichere am Ende des Tages alles in eine Datei: Übergeben ohne Netz.",
  short: (used: string, left: string) =>
    `Der Speicher dieses Geräts ist knapp: Etwa ${left} MB sind frei, Pitslate braucht ${used} MB. Schaff Platz, bevor der Tag beginnt, sonst lassen sich Einträge hier vielleicht nicht speichern.`,
};
