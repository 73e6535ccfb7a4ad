/** What a browser may know of its reader's connection. */
interface MayKnow {
  readonly connection?: { readonly saveData?: boolean };
}

/**
 * Pictures that nobody has come to yet, loaded once the page itself is there: who prints it, or takes it to a cellar
 * without a connection, then has them all. Not for readers who ask that little be loaded.
 */
export function loadFarPictures(page: Document, view: Window): void {
  if ((view.navigator as MayKnow).connection?.saveData) return;
  view.addEventListener('load', () => {
    for (const picture of page.images) picture.loading = 'eager';
  });
}
