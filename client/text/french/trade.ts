/** French words of the trade: what the core tells as facts. */
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
import { pit } from "./pit.ts";
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
  provenances: pit.sheet.provenance,
  rule: ruleWords,
  reason,
  limit,
  setupProblem: (problem: SetupProblem) => {
    switch (problem.type) {
      case "no baseline has it":
        return "Aucune base de ce vélo n’a de valeur pour cela.";
      case "limit":
        return limit(problem.problem);
      case "limit at the bench":
        return `À l’établi : ${limit(problem.problem)}`;
    }
  },
  hindrance: (what: Hindrance) => {
    switch (what.type) {
      case "changed for this already":
        return `${adjusterName(what.path)} : déjà changé pour cela.`;
      case "reading not known":
        return `${adjusterName(what.path)} : ce qui est sur le vélo est inconnu, ou en désaccord.`;
      case "enough by now":
        return `${adjusterName(what.path)} : ce qui est sur le vélo maintenant suffit, d’après les mesures de ce run.`;
      case "sag out of reach":
        return `${adjusterName(what.path)} : sa plage ne ramène pas le sag à sa cible.`;
      case "limit":
        return limit(what.problem);
      case "held to a large step":
        return what.asked
          ? `Les mesures demandent ${quantityText(what.asked)} ; pas plus de ${quantityText(what.most)} à la fois, puis roule à nouveau.`
          : `Les mesures demandent plus que ce que donne ce réglage ; ${quantityText(what.most)} à la fois, puis roule à nouveau.`;
      case "no adjuster for it":
        return "Le vélo n’a pas de réglage pour cela.";
    }
  },
  referralReason,
  referralAction: ({ rule, cause: why }: Referral) => {
    const otherwise = ruleWords(rule)?.otherwise ?? "";
    return why === "two changes did not help"
      ? `Arrête de régler : regarde la révision et les dégâts. ${otherwise}`
      : otherwise;
  },
  waitsFor: (waitsFor: WaitsFor) => {
    switch (waitsFor.type) {
      case "a look at the bike":
        return `Pas avant d’avoir regardé ceci : ${referralReason(waitsFor.referral)}`;
      case "another change":
        return `Un changement à la fois ; d’abord ceci, puis rouler : ${adjusterName(waitsFor.path)}.`;
    }
  },
  cause,
  sheetProblem: (problem: SheetProblem) => {
    switch (problem.type) {
      case "unknown weekend":
        return `Il n’y a pas de week-end « ${problem.weekendId} ».`;
      case "unknown session":
        return `Ce week-end n’a pas de séance « ${problem.sessionId} » ; il y a : ${problem.allowed.join(", ") || "aucune"}.`;
      case "unknown rider":
        return `Il n’y a pas de pilote « ${problem.riderId} » avec un vélo dans l’équipe.`;
      case "no course":
        return `La piste de ${problem.weekend} n’est pas encore saisie : dis à quel point elle est raide, à sauts et mouillée.`;
      case "no conditions":
        return `Conditions pas encore saisies (${problem.session}) : entre la température de l’air et le sol.`;
    }
  },
  entryProblem: (problem: EntryProblem) => {
    switch (problem.type) {
      case "limits":
        return problem.problems.map(limit).join(" ");
      case "no value":
        return `${adjusterName(problem.path)} : entre une valeur.`;
      case "nothing reported":
        return "Il n’y a pas de changement signalé à confirmer.";
      case "no such service": {
        const works = problem.place === "shock" ? service.works.shock : service.works.fork;
        return `${common.places[problem.place]} de ${problem.bike} : cette révision n’existe pas ici : ${works[problem.what]}.`;
      }
    }
  },
  proposalObstacle: (obstacle: ProposalObstacle) => {
    switch (obstacle.type) {
      case "disputed":
        return `En désaccord : ${adjusterName(obstacle.path)}. Quelqu’un doit d’abord regarder le vélo.`;
      case "reported":
        return `Signalé par le pilote, pas encore confirmé par un mécano : ${adjusterName(obstacle.path)}.`;
      case "nothing known":
        return "On ne sait rien de ce qui est sur le vélo.";
    }
  },
  ruleChapters: chapterText,
  ruleText,
};

function referralReason({ rule, cause: why }: Referral): string {
  return why === "two changes did not help"
    ? "Deux changements pour la même plainte ne l’ont pas guérie."
    : (ruleWords(rule)?.reason ?? "");
}
