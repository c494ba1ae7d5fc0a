/** `npm run sheet -- scenarios/<file> --rider <id> [--session <id>] [--paper A5] -o sheet.pdf` */
import { sheetCommand } from "./printing/sheet-command.ts";

const { code, stdout, stderr } = await sheetCommand(process.argv.slice(2));
process.stdout.write(stdout);
process.stderr.write(stderr);
process.exitCode = code;
