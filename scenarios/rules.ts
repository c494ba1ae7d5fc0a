/** Prints the rule book as markdown: `npm run rules`. */
import { ruleBookMarkdown } from "#core/advice/rule-book-markdown.ts";

process.stdout.write(ruleBookMarkdown());
