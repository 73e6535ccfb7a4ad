/** On a narrow page the choices fold away below a button. An address that leads to a group opens them. */
export function startFold(page: Document, form: HTMLFormElement): void {
  const button = form.querySelector<HTMLButtonElement>('.choices-toggle')!;
  const open = (isOpen: boolean): void => {
    form.classList.toggle('is-open', isOpen);
    button.setAttribute('aria-expanded', String(isOpen));
  };
  button.addEventListener('click', () => open(!form.classList.contains('is-open')));
  const follow = (): void => {
    const group = page.getElementById(page.location.hash.slice(1));
    if (!group?.matches('.choice')) return;
    open(true);
    group.setAttribute('open', '');
    group.scrollIntoView();
  };
  page.defaultView?.addEventListener('hashchange', follow);
  follow();
}
