/** The trackside screens and their look, loaded together. */
import "./trackside.css";

export { ChangeScreen } from "./change-screen.tsx";
export { RunScreen } from "./run-screen.tsx";
export { StartScreen } from "./start-screen.tsx";
