import { For, Show } from "solid-js";
import { browserStorage } from "#client/device/storage/browser-storage.ts";
import { common } from "#client/text/common.ts";
import { chooseLanguage, type Language, language, languageNames, languages } from "#client/text/language.ts";

/** The choice of the language on this device. The page starts anew with it: nothing is open where this choice is. */
export function LanguageChoice() {
  const choose = (chosen: Language): void => {
    chooseLanguage(browserStorage(), chosen);
    location.reload();
  };
  return (
    <Show when={languages.length > 1}>
      <section>
        <h2>{common.language}</h2>
        <div class="row">
          <For each={languages}>
            {(tag) => (
              <button type="button" lang={tag} aria-pressed={tag === language()} onClick={() => choose(tag)}>
                {languageNames[tag]}
              </button>
            )}
          </For>
        </div>
      </section>
    </Show>
  );
}
