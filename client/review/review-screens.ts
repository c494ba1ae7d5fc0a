/** The review screens and their look, loaded together. */
import "./changelog.css";
import "./matrix.css";
import "./review.css";
import "./versions.css";

export { ChangelogScreen } from "./changelog-screen.tsx";
export { MatrixScreen } from "./matrix-screen.tsx";
export { RiderScreen } from "./rider-screen.tsx";
