import { render } from "solid-js/web";
import { App } from "./app.tsx";

/** Shows the screens in the page. */
export function showApp(): void {
  const root = document.getElementById("app");
  if (!root) throw new Error("The page has no #app to show the screens in.");
  render(() => <App />, root);
}
