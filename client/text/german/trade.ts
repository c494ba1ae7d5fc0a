/** German words of the trade: what the core tells as facts. */
import type { Referral, WaitsFor } from "#core/advice/adjustment.ts";
import type { Hindrance } from "#core/advice/hindrance.ts";
import { CHAMBER_MARGIN, type LimitProblem } from "#core/advice/limits.ts";
import type { Because } from "#core/advice/reason.ts";
import type { SetupProblem } from "#core/advice/weekend-setup.ts";
import type { ProposalObstacle } from "#core/planning/baseline-review.ts";
import type { EntryProblem } from "#core/planning/entries.ts";
import type { SheetProblem } from "#core/planning/setup-sheet.ts";
import type { Change } from "#core/weekend/changelog.ts";
import type { trade as model } from "../english/trade.ts";
import { quantityText } from "../quantity-text.ts";
import type { Said } from "../spoken.ts";
import { common } from "./common.ts";
import { sheet } from "./pit-sheet.ts";
import { chapterText, ruleText } from "./rule-text.ts";
import { ruleWords } from "./rule-words.ts";
import { service } from "./service.ts";
import { trackside } from "./trackside.ts";
import { adjusterName, symptomNames } from "./trade-names.ts";

export const trade: Said<typeof model> = {
  adjuster: adjusterName,
  symptoms: symptomNames,
  feelings: {
    ...trackside.feelings.start,
    ...trackside.feelings.middle,
    ...trackside.feelings.end,
    ...trackside.feelings.returnSpeed,
    slides: trackside.feelings.grip.slides,
  },
  provenances: sheet.provenance,
  rule: ruleWords,
  reason,
  limit,
  setupProblem: (problem: SetupProblem) => {
    switch (problem.type) {
      case "no baseline has it":
        return "Kein Basis-Setup dieses Bikes hat dafür einen Wert.";
      case "limit":
        return limit(problem.problem);
      case "limit at the bench":
        return `An der Werkbank: ${limit(problem.problem)}`;
    }
  },
  hindrance,
  referralReason,
  referralAction: ({ rule, cause }: Referral) => {
    const otherwise = ruleWords(rule)?.otherwise ?? "";
    return cause === "two changes did not help"
      ? `Nicht weiter einstellen: nach Service und Schäden schauen. ${otherwise}`
      : otherwise;
  },
  waitsFor: (waitsFor: WaitsFor) => {
    switch (waitsFor.type) {
      case "a look at the bike":
        return `Erst, wenn hiernach geschaut ist: ${referralReason(waitsFor.referral)}`;
      case "another change":
        return `Eine Änderung nach der anderen: erst ${adjusterName(waitsFor.path)}, dann fahren.`;
    }
  },
  cause,
  sheetProblem: (problem: SheetProblem) => {
    switch (problem.type) {
      case "unknown weekend":
        return `Ein Wochenende „${problem.weekendId}“ gibt es nicht.`;
      case "unknown session":
        return `Eine Session „${problem.sessionId}“ hat dieses Wochenende nicht; es gibt: ${problem.allowed.join(", ") || "keine"}.`;
      case "unknown rider":
        return `Einen Fahrer „${problem.riderId}“ mit Bike gibt es im Team nicht.`;
      case "no course":
        return `Die Strecke von ${problem.weekend} ist noch nicht eingetragen: Trag ein, wie steil, sprunglastig und nass sie ist.`;
      case "no conditions":
        return `Die Bedingungen für ${problem.session} sind noch nicht eingetragen: Trag die Lufttemperatur und den Boden ein.`;
    }
  },
  entryProblem: (problem: EntryProblem) => {
    switch (problem.type) {
      case "limits":
        return problem.problems.map(limit).join(" ");
      case "no value":
        return `${adjusterName(problem.path)}: Trag einen Wert ein.`;
      case "nothing reported":
        return "Es gibt keine gemeldete Änderung zu bestätigen.";
      case "no such service": {
        const work = problem.place === "shock" ? service.works.shock[problem.what] : service.works.fork[problem.what];
        return `${common.places[problem.place]} von ${problem.bike}: So einen Service gibt es da nicht: ${work}.`;
      }
    }
  },
  proposalObstacle: (obstacle: ProposalObstacle) => {
    switch (obstacle.type) {
      case "disputed":
        return `${adjusterName(obstacle.path)} ist strittig: Erst muss jemand ans Bike schauen.`;
      case "reported":
        return `${adjusterName(obstacle.path)} hat der Fahrer gemeldet, und noch kein Mechaniker hat es bestätigt.`;
      case "nothing known":
        return "Es ist nicht bekannt, was am Bike ist.";
    }
  },
  ruleChapters: chapterText,
  ruleText,
};

function reason(because: Because): string {
  switch (because.type) {
    case "own baseline":
      return `Eigenes Basis-Setup „${common.courseTypes[because.courseType]}“: ${quantityText(because.value)}.`;
    case "blend":
      return `Mischung eigener Basis-Setups: ${because.parts
        .map((part) => `${part.percent} % ${common.courseTypes[part.courseType]} mit ${quantityText(part.value)}`)
        .join(", ")}.`;
    case "condition rule": {
      const sentence = ruleWords(because.rule)?.reason ?? `Nach der Regel „${because.rule}“.`;
      return because.percent === undefined ? sentence : `${sentence} Für ${because.percent} % davon.`;
    }
    case "rider mass":
      return `Fahrer mit ${quantityText(because.now)}, Basis-Setup mit ${quantityText(because.atBaseline)}: So bleibt der Sag.`;
    case "altitude": {
      const air = because.now.value > because.atBaseline.value ? "dünnere" : "dichtere";
      return `Basis-Setup auf ${quantityText(because.atBaseline)}, heute ${quantityText(because.now)}: ${air} Luft, gleicher Halt spät im Hub.`;
    }
    case "rebound follows":
      return `Die Zugstufe folgt der ${because.spring === "softer" ? "weicheren" : "härteren"} Feder: Das Dämpfungsmaß des Basis-Setups bleibt.`;
    case "temperature":
      return `Bei ${quantityText(because.bench)} so einstellen, dass es bei ${quantityText(because.course)} dann ${quantityText(because.value)} zeigt.`;
  }
}

function limit(problem: LimitProblem): string {
  const name = adjusterName(problem.path);
  switch (problem.type) {
    case "no such adjuster":
      return `${name}: Das hat das Bike ${problem.bike} nicht.`;
    case "wrong unit":
      return `${name}: ${quantityText(problem.value)} hat hier die falsche Einheit; gebraucht wird eine für ${dimensionName(problem.allowed)}.`;
    case "out of range":
      return `${name}: ${quantityText(problem.value)} liegt nicht im Bereich des Teils, ${quantityText(problem.minimum)} bis ${quantityText(problem.maximum)}.`;
    case "not a step":
      return `${name}: ${quantityText(problem.value)} lässt sich nicht einstellen; ein Schritt sind ${quantityText(problem.step)}.`;
    case "above marked maximum":
      return `${name}: ${quantityText(problem.value)} liegt über den ${quantityText(problem.maximum)}, die auf ${problem.of === "tyre" ? "dem Reifen" : "der Felge"} stehen.`;
    case "chambers too close":
      return `${name}: Die Zweitkammer (${quantityText(problem.secondary)}) muss mindestens ${quantityText(CHAMBER_MARGIN)} über der Hauptkammer (${quantityText(problem.main)}) bleiben.`;
  }
}

function dimensionName(dimension: string): string {
  const names: Readonly<Record<string, string>> = {
    pressure: "Druck",
    "spring rate": "Federrate",
    clicks: "Klicks",
    turns: "Drehungen",
    spacers: "Spacer",
  };
  return names[dimension] ?? dimension;
}

function hindrance(what: Hindrance): string {
  switch (what.type) {
    case "changed for this already":
      return `${adjusterName(what.path)}: dafür schon geändert.`;
    case "reading not known":
      return `${adjusterName(what.path)}: Was am Bike ist, ist unbekannt oder strittig.`;
    case "enough by now":
      return `${adjusterName(what.path)}: Was jetzt am Bike ist, reicht nach den Messungen jenes Laufs.`;
    case "sag out of reach":
      return `${adjusterName(what.path)}: Der Bereich bringt den Sag nicht ins Ziel.`;
    case "limit":
      return limit(what.problem);
    case "held to a large step":
      return what.asked
        ? `Die Messungen verlangen ${quantityText(what.asked)}; höchstens ${quantityText(what.most)} auf einmal, dann wieder fahren.`
        : `Die Messungen verlangen mehr, als hier geht; ${quantityText(what.most)} auf einmal, dann wieder fahren.`;
    case "no adjuster for it":
      return "Das Bike hat dafür keinen Einstellpunkt.";
  }
}

function referralReason({ rule, cause: why }: Referral): string {
  return why === "two changes did not help"
    ? "Zwei Änderungen wegen derselben Klage haben nicht geholfen."
    : (ruleWords(rule)?.reason ?? "");
}

function cause({ cause: why, voided }: Pick<Change, "cause" | "voided">): string {
  if (voided !== undefined) return voided;
  switch (why?.type) {
    case undefined:
      return "Kein Grund angegeben.";
    case "advice":
      return ruleWords(why.rule)?.reason ?? `Nach der Regel „${why.rule}“.`;
    case "own baseline":
      return `Zurück zum eigenen Basis-Setup: ${why.courseTypes.map((type) => courseTypeName(type)).join(", ")}.`;
    case "conditions":
      return "Aus dem Wochenend-Setup für Strecke und Bedingungen.";
    case "own change":
      return "Vom Fahrer selbst an der Strecke geändert.";
    case "by hand":
      return why.note === undefined || why.note === "" ? "Von Hand eingestellt." : `Von Hand eingestellt: ${why.note}`;
    case "revert":
      return "Rückgängig gemacht: zurück auf den Wert davor.";
    case "resolution":
      return "Ein Widerspruch, mit einem Blick aufs Bike geklärt.";
    case "carry-over":
      return "Aus der Saison davor übernommen.";
    case "confirmation":
      return "Meldung des Fahrers, am Bike bestätigt.";
    case "approval":
      return "Als Basis-Setup freigegeben.";
    case "setup":
      return "Erster Eintrag.";
  }
}

function courseTypeName(type: string): string {
  const names: Readonly<Record<string, string>> = common.courseTypes;
  return names[type] ?? type;
}
