/**
 * Adds a classic script to the page and waits until it has run: nothing else loads where a page was opened from a disk.
 * What it offers is a global.
 *
 * @param src  The way from the page.
 * @throws Where the script does not load.
 */
export function loadScript(page: Document, src: string): Promise<void> {
  return new Promise((loaded, failed) => {
    const script = Object.assign(page.createElement('script'), { src });
    script.addEventListener('load', () => loaded());
    script.addEventListener('error', () => failed(new Error(`${src} did not load`)));
    page.head.append(script);
  });
}

/** The way from the page to the edition's folder. */
export function rootOf(page: Document): string {
  return page.documentElement.dataset['root'] ?? '';
}
