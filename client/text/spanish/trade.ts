/** Spanish words of the trade: what the core tells as facts. */
import type { Referral, WaitsFor } from "#core/advice/adjustment.ts";
import type { Hindrance } from "#core/advice/hindrance.ts";
import type { SetupProblem } from "#core/advice/weekend-setup.ts";
import type { ProposalObstacle } from "#core/planning/baseline-review.ts";
import type { EntryProblem } from "#core/planning/entries.ts";
import type { SheetProblem } from "#core/planning/setup-sheet.ts";
import type { trade as model } from "../english/trade.ts";
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

const { start, middle, end, returnSpeed, grip } = trackside.feelings;

export const trade: Said<typeof model> = {
  adjuster: adjusterName,
  symptoms: symptomNames,
  feelings: { ...start, ...middle, ...end, ...returnSpeed, slides: grip.slides },
  provenances: sheet.provenance,
  rule: ruleWords,
  reason,
  limit,
  setupProblem: (problem: SetupProblem) => {
    switch (problem.type) {
      case "no baseline has it":
        return "Ninguna base de esta bici tiene un valor para esto.";
      case "limit":
        return limit(problem.problem);
      case "limit at the bench":
        return `En el banco: ${limit(problem.problem)}`;
    }
  },
  hindrance: (what: Hindrance) => {
    switch (what.type) {
      case "changed for this already":
        return `${adjusterName(what.path)}: ya se ha cambiado por esto.`;
      case "reading not known":
        return `${adjusterName(what.path)}: lo que lleva la bici no se sabe o tiene una discrepancia.`;
      case "enough by now":
        return `${adjusterName(what.path)}: lo que lleva ahora la bici basta, según lo medido en esa bajada.`;
      case "sag out of reach":
        return `${adjusterName(what.path)}: su margen no alcanza a llevar el sag al objetivo.`;
      case "limit":
        return limit(what.problem);
      case "held to a large step":
        return what.asked
          ? `Lo medido pide ${quantityText(what.asked)}; como mucho ${quantityText(what.most)} de una vez, y después otra bajada.`
          : `Lo medido pide más de lo que da este ajuste; ${quantityText(what.most)} de una vez, y después otra bajada.`;
      case "no adjuster for it":
        return "La bici no tiene ningún ajuste para esto.";
    }
  },
  referralReason,
  referralAction: ({ rule, cause: why }: Referral) => {
    const otherwise = ruleWords(rule)?.otherwise ?? "";
    return why === "two changes did not help"
      ? `Deja de cambiar ajustes: mira el mantenimiento y si hay daños. ${otherwise}`
      : otherwise;
  },
  waitsFor: (waitsFor: WaitsFor) => {
    switch (waitsFor.type) {
      case "a look at the bike":
        return `No hasta haber mirado esto: ${referralReason(waitsFor.referral)}`;
      case "another change":
        return `Un solo cambio cada vez; antes va este, y después una bajada: ${adjusterName(waitsFor.path)}.`;
    }
  },
  cause,
  sheetProblem: (problem: SheetProblem) => {
    switch (problem.type) {
      case "unknown weekend":
        return `No hay ningún fin de semana «${problem.weekendId}».`;
      case "unknown session":
        return `Este fin de semana no tiene ninguna sesión «${problem.sessionId}»; hay: ${problem.allowed.join(", ") || "ninguna"}.`;
      case "unknown rider":
        return `No hay ningún piloto «${problem.riderId}» con bici en el equipo.`;
      case "no course":
        return `La pista de ${problem.weekend} no está apuntada todavía: di qué parte es empinada, de saltos y mojada.`;
      case "no conditions":
        return `Las condiciones de ${problem.session} no están apuntadas todavía: escribe la temperatura del aire y elige el terreno.`;
    }
  },
  entryProblem: (problem: EntryProblem) => {
    switch (problem.type) {
      case "limits":
        return problem.problems.map(limit).join(" ");
      case "no value":
        return `${adjusterName(problem.path)}: escribe un valor.`;
      case "nothing reported":
        return "No hay ningún cambio del piloto que confirmar.";
      case "no such service": {
        const works = problem.place === "shock" ? service.works.shock : service.works.fork;
        return `${common.places[problem.place]} de ${problem.bike}: ahí no existe este mantenimiento: ${works[problem.what]}.`;
      }
    }
  },
  proposalObstacle: (obstacle: ProposalObstacle) => {
    switch (obstacle.type) {
      case "disputed":
        return `${adjusterName(obstacle.path)}: hay una discrepancia. Antes alguien tiene que mirar la bici.`;
      case "reported":
        return `${adjusterName(obstacle.path)}: lo dice el piloto y ningún mecánico lo ha confirmado todavía.`;
      case "nothing known":
        return "No se sabe nada de lo que lleva la bici.";
    }
  },
  ruleChapters: chapterText,
  ruleText,
};

function referralReason({ rule, cause: why }: Referral): string {
  return why === "two changes did not help"
    ? "Dos cambios por la misma queja no la han quitado."
    : (ruleWords(rule)?.reason ?? "");
}
