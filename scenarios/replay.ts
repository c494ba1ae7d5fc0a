/** `npm run replay -- scenarios/<file> [--json] [--seed <number>]` */
import { replayCommand } from "./replay-command.ts";

const { code, stdout, stderr } = replayCommand(process.argv.slice(2));
process.stdout.write(stdout);
process.stderr.write(stderr);
process.exitCode = code;
