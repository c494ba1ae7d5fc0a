/** Prints the rule book as markdown: `npm run rules`. */
import { ruleBookMarkdown } from "#core/advice/rule-book.ts";

process.stdout.write(ruleBookMarkdown());
