/** The pit's screens and their look, loaded together. */
import "./pit.css";
import "./bench.css";
import "./line-chart.css";
import "./course/course.css";
import "./force-chart.css";
import "./jobs.css";
import "./service.css";
import "./weekend/weekend.css";
import "./bikes/bikes.css";

export { BikesPage } from "./bikes/bikes-page.tsx";
export { CoursePage } from "./course-page.tsx";
export { RiderPage } from "./rider-page.tsx";
export { RulesPage } from "./rules-page.tsx";
export { TeamBoard } from "./team-board.tsx";
export { ChangeWeekendPage, NewWeekendPage } from "./weekend/weekend-page.tsx";
