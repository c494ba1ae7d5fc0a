import { type JSX, onCleanup, onMount } from "solid-js";

export interface ModalProps {
  readonly title: string;
  /** Called when it is closed by Escape or by the page. */
  readonly onClose: () => void;
  readonly children: JSX.Element;
}

/** A native dialog over the screen, open while it is shown; then the focus is back where it was. */
export function Modal(props: ModalProps) {
  let dialog: HTMLDialogElement | undefined;
  onMount(() => {
    const opener = document.activeElement;
    dialog?.showModal();
    // A dialog that is closed gives the focus back by itself, one that is taken away with its screen's state does not.
    onCleanup(() => queueMicrotask(() => opener instanceof HTMLElement && opener.isConnected && opener.focus()));
  });
  return (
    <dialog ref={dialog} aria-label={props.title} onClose={() => props.onClose()}>
      <h2>{props.title}</h2>
      {props.children}
    </dialog>
  );
}
