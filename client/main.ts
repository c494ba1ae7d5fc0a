import "./design/tokens.css";
import "./design/base.css";
import "./design/controls.css";
import "./design/layout.css";
import "./design/rain-lock.css";
import { browserStorage } from "./device/storage/browser-storage.ts";
import { loadShownWorkplace } from "./load-shown-workplace.ts";
import { chosenLanguage, language, languageFor, setLanguage } from "./text/language.ts";
import { loadFirstWords } from "./text/load-words.ts";

setLanguage(languageFor(chosenLanguage(browserStorage()), navigator.languages));
document.documentElement.lang = language();
// The screens take their texts as plain values when their code is loaded: so the texts come first.
void loadFirstWords()
  .then(() => {
    const app = import("./show-app.tsx");
    loadShownWorkplace(location.pathname);
    return app;
  })
  .then(({ showApp }) => showApp());
