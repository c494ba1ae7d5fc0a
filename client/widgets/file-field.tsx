import { createUniqueId } from "solid-js";

/** The browser's own choice of a file, as a large button. */
export function FileField(props: { label: string; hint: string; accept: string; onFile: (file: File) => void }) {
  const hintId = createUniqueId();
  const choose = (input: HTMLInputElement): void => {
    const file = input.files?.[0];
    if (file) props.onFile(file);
    // Emptied, so that choosing the same file once more is a choice too.
    input.value = "";
  };
  return (
    <>
      <p id={hintId}>{props.hint}</p>
      <label class="button file-button">
        {props.label}
        <input
          type="file"
          accept={props.accept}
          aria-describedby={hintId}
          onChange={(event) => choose(event.currentTarget)}
        />
      </label>
    </>
  );
}
