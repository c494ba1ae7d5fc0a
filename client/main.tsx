import { render } from "solid-js/web";
import { App } from "./app.tsx";
import "./design/tokens.css";
import "./design/base.css";
import "./design/controls.css";
import "./design/layout.css";

const root = document.getElementById("app");
if (!root) throw new Error("The page has no #app to show the screens in.");
render(() => <App />, root);
