/** Where something stands in a file and why it cannot be taken in, in the language of the device. */
import { common } from "#client/text/common.ts";
import { dataProblems as words } from "#client/text/data-problems.ts";
import { trade } from "#client/text/trade.ts";
import { recordProblemText } from "#client/widgets/record-problem-text.ts";
import type { FilePlace } from "#core/exchange/file-place.ts";
import type { FileProblem } from "#core/exchange/file-problem.ts";
import type { RowRefusal } from "#core/exchange/row-refusal.ts";

export function filePlaceText(place: FilePlace): string {
  if (place.type === "value") {
    return place.key === undefined ? words.place.kind(place.kind) : words.place.value(place.kind, place.key);
  }
  const { first, last, of } = place;
  const lines = first === last ? words.place.line(first) : words.place.lines(first, last);
  return of ? words.place.of[of.type](lines, of.name) : lines;
}

export function rowRefusalText(refusal: RowRefusal): string {
  const { row } = words;
  switch (refusal.type) {
    case "record":
      return recordProblemText(refusal.problem);
    case "limit":
      return trade.limit(refusal.problem);
    case "given twice":
      return row.givenTwice;
    case "disputed here":
      return row.disputedHere;
    case "disputed in the file":
      return row.disputedInFile;
    case "nothing to lean on":
      return row.nothingToLeanOn(refusal.kind, refusal.key);
    case "bike of another":
      return row.bikeOfAnother(refusal.bike, refusal.owner);
    case "part of another place":
      return row.partOfAnotherPlace(refusal.part, common.places[refusal.place], common.places[refusal.given]);
    case "no setting's key":
      return row.noSettingKey;
    case "adjuster twice":
      return row.adjusterTwice(refusal.adjuster, refusal.baseline);
    case "line refused":
      return row.lineRefused;
    case "no settled baseline":
      return row.noSettledBaseline;
    case "unknown kind":
      return row.unknownKind(refusal.allowed.join(", "));
    case "no object":
      return row.noObject;
    case "plate of another":
      return row.plateOfAnother(refusal.plate, refusal.rider, refusal.said);
    case "plate of several":
      return row.plateOfSeveral(refusal.plate, refusal.riders.join(", "));
    case "no rider":
      return row.noRider(whoText(refusal));
    case "several riders":
      return row.severalRiders(whoText(refusal));
    case "no session chosen":
      return row.noSessionChosen(sessionsText(refusal.sessions));
    case "unknown session":
      return row.unknownSession(refusal.said, sessionsText(refusal.sessions));
    case "no time":
      return row.noTime(refusal.said);
    case "disputed run":
      return row.disputedRun;
  }
}

export function fileProblemText(problem: FileProblem): string {
  const { file } = words;
  switch (problem.type) {
    case "not JSON":
      return file.notJson;
    case "other format":
      return file.otherFormat(problem.allowed);
    case "other version":
      return problem.version === undefined
        ? file.noVersion(problem.allowed)
        : file.otherVersion(problem.version, problem.allowed);
    case "no values":
      return file.noValues;
    case "too many values":
      return file.tooManyValues(problem.most);
    case "too many rows":
      return file.tooManyRows(problem.most);
    case "other table":
      // The names stand as the file has to have them, in every language.
      return file.otherTable(
        problem.allowed.map(({ table, columns }) => `${table} (${columns.join(", ")})`).join("; "),
      );
  }
}

function whoText({ plate, name }: { readonly plate: string; readonly name: string }): string {
  const said = [plate === "" ? "" : words.row.plate(plate), name].filter((text) => text !== "");
  return said.length === 0 ? words.row.nobodyNamed : said.join(", ");
}

function sessionsText(sessions: readonly string[]): string {
  return sessions.length === 0 ? words.row.noSessions : sessions.join(", ");
}
