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
  // The browser says "close" a task later than the focus is back, and what was opened anew by then would be closed with it.
  const closeAtOnce = (event: Event): void => {
    // A file field within the dialog says "cancel" too.
    if (event.target !== dialog) return;
    event.preventDefault();
    props.onClose();
  };
  return (
    <dialog ref={dialog} aria-label={props.title} onCancel={closeAtOnce} onClose={() => props.onClose()}>
      <h2>{props.title}</h2>
      {props.children}
    </dialog>
  );
}
