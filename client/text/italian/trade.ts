/** Italian words of the trade: what the core tells as facts. */
import type { Referral, WaitsFor } from "#core/advice/adjustment.ts";
import type { Hindrance } from "#core/advice/hindrance.ts";
import type { SetupProblem } from "#core/advice/weekend-setup.ts";
import type { ProposalObstacle } from "#core/planning/baseline-review.ts";
import type { EntryProblem } from "#core/planning/entries.ts";
import type { SheetProblem } from "#core/planning/setup-sheet.ts";
import type { trade as english } from "../english/trade.ts";
import { quantityText } from "../quantity-text.ts";
import type { Said } from "../spoken.ts";
import { common } from "./common.ts";
import { sheet } from "./pit-sheet.ts";
import { chapterText, ruleText } from "./rule-text.ts";
import { ruleWords } from "./rule-words.ts";
import { service } from "./service.ts";
import { trackside } from "./trackside.ts";
import { limit } from "./trade-limit.ts";
import { adjusterName, symptomNames } from "./trade-names.ts";
import { cause, reason } from "./trade-reason.ts";

export const trade: Said<typeof english> = {
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
        return "Nessuna base di questa bici ha un valore per questo.";
      case "limit":
        return limit(problem.problem);
      case "limit at the bench":
        return `Al banco: ${limit(problem.problem)}`;
    }
  },
  hindrance: (what: Hindrance) => {
    switch (what.type) {
      case "changed for this already":
        return `${adjusterName(what.path)}: già cambiato per questo.`;
      case "reading not known":
        return `${adjusterName(what.path)}: quello che c’è sulla bici è ignoto, o in disaccordo.`;
      case "enough by now":
        return `${adjusterName(what.path)}: quello che c’è adesso sulla bici basta, secondo le misure di quella run.`;
      case "sag out of reach":
        return `${adjusterName(what.path)}: con il suo campo il sag non torna nell’obiettivo.`;
      case "limit":
        return limit(what.problem);
      case "held to a large step":
        return what.asked
          ? `Le misure chiedono ${quantityText(what.asked)}; al massimo ${quantityText(what.most)} alla volta, poi prova di nuovo.`
          : `Le misure chiedono più di quanto dà questa regolazione; ${quantityText(what.most)} alla volta, poi prova di nuovo.`;
      case "no adjuster for it":
        return "La bici non ha una regolazione per questo.";
    }
  },
  referralReason,
  referralAction: ({ rule, cause: why }: Referral) => {
    const otherwise = ruleWords(rule)?.otherwise ?? "";
    return why === "two changes did not help"
      ? `Smetti di regolare: guarda revisione e danni. ${otherwise}`
      : otherwise;
  },
  waitsFor: (waitsFor: WaitsFor) => {
    switch (waitsFor.type) {
      case "a look at the bike":
        return `Non prima di aver guardato questo: ${referralReason(waitsFor.referral)}`;
      case "another change":
        return `Una modifica alla volta; prima questa, poi una run: ${adjusterName(waitsFor.path)}.`;
    }
  },
  cause,
  sheetProblem: (problem: SheetProblem) => {
    switch (problem.type) {
      case "unknown weekend":
        return `Non c’è nessun weekend «${problem.weekendId}».`;
      case "unknown session":
        return `Questo weekend non ha una sessione «${problem.sessionId}»; ci sono: ${problem.allowed.join(", ") || "nessuna"}.`;
      case "unknown rider":
        return `Nel team non c’è un pilota «${problem.riderId}» con una bici.`;
      case "no course":
        return `La pista di ${problem.weekend} non è ancora inserita: di’ quanto è ripida, con salti e bagnata.`;
      case "no conditions":
        return `Condizioni non ancora inserite (${problem.session}): inserisci la temperatura dell’aria e il terreno.`;
    }
  },
  entryProblem: (problem: EntryProblem) => {
    switch (problem.type) {
      case "limits":
        return problem.problems.map(limit).join(" ");
      case "no value":
        return `${adjusterName(problem.path)}: inserisci un valore.`;
      case "nothing reported":
        return "Non c’è nessuna modifica segnalata da confermare.";
      case "no such service": {
        const works = problem.place === "shock" ? service.works.shock : service.works.fork;
        return `${common.places[problem.place]} di ${problem.bike}: questa revisione qui non esiste: ${works[problem.what]}.`;
      }
    }
  },
  proposalObstacle: (obstacle: ProposalObstacle) => {
    switch (obstacle.type) {
      case "disputed":
        return `In disaccordo: ${adjusterName(obstacle.path)}. Prima qualcuno deve guardare la bici.`;
      case "reported":
        return `Segnalato dal pilota, non ancora confermato da un meccanico: ${adjusterName(obstacle.path)}.`;
      case "nothing known":
        return "Non si sa niente di quello che è sulla bici.";
    }
  },
  ruleChapters: chapterText,
  ruleText,
};

function referralReason({ rule, cause: why }: Referral): string {
  return why === "two changes did not help"
    ? "Due modifiche per lo stesso problema non sono servite."
    : (ruleWords(rule)?.reason ?? "");
}
