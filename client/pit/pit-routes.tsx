import { Route } from "@solidjs/router";
import { CoursePage } from "./course-page.tsx";
import { RiderPage } from "./rider-page.tsx";
import { RulesPage } from "./rules-page.tsx";
import { TeamBoard } from "./team-board.tsx";
import { ChangeWeekendPage, NewWeekendPage } from "./weekend/weekend-page.tsx";
import "./pit.css";
import "./bench.css";
import "./service.css";
import "./weekend/weekend.css";

/** The pit workplace. */
export function PitRoutes() {
  return (
    <>
      <Route path="/pit" component={TeamBoard} />
      <Route path="/pit/course" component={CoursePage} />
      <Route path="/pit/weekend/new" component={NewWeekendPage} />
      <Route path="/pit/weekend/:weekendId/edit" component={ChangeWeekendPage} />
      <Route path="/pit/rules" component={RulesPage} />
      <Route path="/pit/rider/:riderId" component={RiderPage} />
    </>
  );
}
