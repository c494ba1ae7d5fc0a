/** An empty box to write into; a line round it, since backgrounds are not printed. */
export function PencilBox() {
  return <span class="pencil-box" aria-hidden="true" />;
}
