import { type JSX, onMount } from "solid-js";

export interface ModalProps {
  readonly title: string;
  /** Called when it is closed by Escape or by the page. */
  readonly onClose: () => void;
  readonly children: JSX.Element;
}

/** A native dialog over the screen, open while it is shown. */
export function Modal(props: ModalProps) {
  let dialog: HTMLDialogElement | undefined;
  onMount(() => dialog?.showModal());
  return (
    <dialog ref={dialog} aria-label={props.title} onClose={() => props.onClose()}>
      <h2>{props.title}</h2>
      {props.children}
    </dialog>
  );
}
