/** Buttons that print their page; without scripts they are not there, and the browser's own menu prints. */
export function startPrintButtons(page: Document): void {
  for (const button of page.querySelectorAll<HTMLButtonElement>('[data-print]')) {
    button.addEventListener('click', () => page.defaultView?.print());
    button.hidden = false;
  }
}
