/** The tests of the screens speak English. */
import * as firstScreens from "#client/text/english/first-screens.ts";
import * as workplaces from "#client/text/english/workplaces.ts";
import { speak } from "#client/text/spoken.ts";

speak({ ...firstScreens, ...workplaces });
