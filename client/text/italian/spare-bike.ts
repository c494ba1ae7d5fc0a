/** Italian texts of a rider's bikes: which is ridden, a setup copied to another, and a part moved between them. */
import type { Place } from "#core/team/place.ts";
import type { spareBike as english } from "../english/spare-bike.ts";
import type { Said } from "../spoken.ts";
import { common } from "./common.ts";
import { settingsText } from "./settings-count.ts";
import { copy } from "./spare-bike-copy.ts";
import { differences } from "./spare-bike-differences.ts";
import { move } from "./spare-bike-move.ts";

const nameOf = (place: Place): string => common.places[place].toLowerCase();

export const spareBike: Said<typeof english> = {
  title: (rider: string) => `Bici di ${rider}`,
  link: (bike: string, count: number) => (count > 1 ? `Su ${bike}, 1 di ${count} bici` : `Su ${bike}`),
  backToBench: "Al banco",
  ridden: "Quale bici è in uso",
  riddenAbout:
    "Scheda assetto, consigli, run e il telefono del pilota seguono la bici in uso. Dillo appena il pilota cambia bici.",
  isRidden: "In uso adesso",
  ride: (bike: string) => `Da adesso: ${bike}`,
  rides: (rider: string, bike: string) => `${rider} adesso usa ${bike}`,
  firstRide: "La prima uscita con un’altra bici, o dopo aver cambiato un componente, è lenta e breve.",
  noPart: "nessun componente",
  inDispute: "in disaccordo",
  part: (place: Place, name: string) => `${nameOf(place)}: ${name}`,
  disputes: {
    title: (place: Place, bike: string) => `Quale ${nameOf(place)} c’è su ${bike}?`,
    about: "Sono state dette cose diverse. Guarda la bici, poi di’ qual è. Fino ad allora qui non ne risulta nessuna.",
    says: (part: string, who: string, when: string) => `${part}: montato da ${who}, ${when}`,
    entered: (part: string) => `${part}: inserito con questa bici`,
    isOn: (part: string) => `Sulla bici c’è ${part}`,
    isElsewhere: (part: string) => `${part} non è su nessuna bici`,
    settled: (part: string, bike: string) => `Bici guardata: ${part} è su ${bike}`,
    settledAside: (part: string) => `Bici guardata: ${part} non è su nessuna bici`,
    line: (place: Place, bike: string) => `Quale ${nameOf(place)} c’è su ${bike}: sono state dette cose diverse`,
  },
  copy,
  differences,
  move,
  undo: {
    moved: (part: string) => `spostato ${part}`,
    rides: (bike: string) => `usa ${bike}`,
    copied: (count: number) => `copiato, ${settingsText(count)}`,
  },
};
