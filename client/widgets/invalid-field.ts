/** Fields in which something is typed that their widget did not take. */

/** The label of the first such field inside `form`, after putting the focus on it; undefined when there is none. */
export function focusInvalidField(form: HTMLElement | undefined): string | undefined {
  const field = form?.querySelector<HTMLElement>('[aria-invalid="true"]');
  field?.focus();
  return field?.getAttribute("aria-label") ?? undefined;
}
