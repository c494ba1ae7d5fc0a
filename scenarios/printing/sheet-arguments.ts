/** What `npm run sheet` was asked for. */
import { parseArgs } from "node:util";

/** The pages that can be printed. */
export type SheetPage =
  | { readonly of: "rider"; readonly riderId: string }
  | { readonly of: "team" }
  | { readonly of: "weekend" };

export interface SheetArguments {
  readonly file: string;
  readonly page: SheetPage;
  readonly session: string | undefined;
  readonly paper: SheetPaper;
  readonly output: string;
}

export const sheetPapers = ["A5", "A4", "Letter"] as const;
export type SheetPaper = (typeof sheetPapers)[number];

export const sheetHelp = `Plays a race weekend and prints a page of it as PDF, as the client would.

Usage: npm run sheet -- <file> --rider <id> -o <sheet.pdf> [options]

What to print, one of
  --rider <id>          the rider's setup sheet (A5)
  --team                the team's session sheet (A4, across)
  --weekend             the weekend report (A4)

Options
  -o, --output <file>   the PDF to write; a file of that name is replaced
  --session <id>        the session of the sheet (default: the last one with conditions)
  --paper <name>        ${sheetPapers.join(", ")}
  --help                this text
`;

/** The arguments, "help", or the sentence that says what is wrong with them. */
export function readSheetArguments(
  args: readonly string[],
): SheetArguments | "help" | { readonly ok: false; readonly sentence: string } {
  const read = parsed(args);
  if (typeof read === "string") return refused(read);
  const { values, positionals } = read;
  if (values.help) return "help";
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0) return refused("Name one scenario file; --help lists the options.");
  const pages: SheetPage[] = [
    ...(values.rider === undefined ? [] : [{ of: "rider", riderId: values.rider } as const]),
    ...(values.team ? [{ of: "team" } as const] : []),
    ...(values.weekend ? [{ of: "weekend" } as const] : []),
  ];
  const [page, another] = pages;
  if (!page || another) return refused("Say what to print: one of --rider <id>, --team and --weekend.");
  if (values.output === undefined) return refused("Say where the PDF goes: -o <file>, for example -o sheet.pdf.");
  const wanted = values.paper ?? (page.of === "rider" ? "A5" : "A4");
  const paper = sheetPapers.find((known) => known.toLowerCase() === wanted.toLowerCase());
  if (!paper) return refused(`There is no paper "${wanted}"; allowed: ${sheetPapers.join(", ")}.`);
  return { file, page, session: values.session, paper, output: values.output };
}

function parsed(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        rider: { type: "string" },
        team: { type: "boolean", default: false },
        weekend: { type: "boolean", default: false },
        session: { type: "string" },
        paper: { type: "string" },
        output: { type: "string", short: "o" },
        help: { type: "boolean", default: false },
      },
    });
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return `${reason.split("\n", 1)[0]}; --help lists the options.`;
  }
}

function refused(sentence: string): { readonly ok: false; readonly sentence: string } {
  return { ok: false, sentence };
}
