/**
 * Printing: the summary by default, whoever asks the browser for it; the full record by its own button. A style sheet
 * (print.css) tells them apart by what stands on the root.
 */
const { dataset } = document.documentElement;

export function printFullRecord(): void {
  dataset.print = 'full';
  addEventListener('afterprint', () => delete dataset.print, { once: true });
  print();
}
