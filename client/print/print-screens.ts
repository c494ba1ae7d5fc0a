/** The pages to be printed and their look, loaded together. */
import "./print.css";
import "./print-paper.css";
import "./report.css";

export { ReportScreen } from "./report-screen.tsx";
export { SetupPrintScreen } from "./setup-print-screen.tsx";
export { TeamPrintScreen } from "./team-print-screen.tsx";
