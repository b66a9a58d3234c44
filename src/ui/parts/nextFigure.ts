/** Where a typed figure leads: to the next one of its form that is still empty. Enter and the page's own key pad go there. */

export const isFigure = (target: unknown): target is HTMLInputElement =>
  target instanceof HTMLInputElement && target.classList.contains('figure-input');

/** Null where every later figure is filled in. */
export function nextEmpty(field: HTMLInputElement, form: HTMLFormElement): HTMLInputElement | null {
  const figures = [...form.querySelectorAll<HTMLInputElement>('input.figure-input')];
  return figures.slice(figures.indexOf(field) + 1).find(({ value }) => value.trim() === '') ?? null;
}
