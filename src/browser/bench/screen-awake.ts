/** What of a screen that stays on we need: a browser may lack it, and may take it away at any time. */
interface WakeLock {
  readonly request: (kind: 'screen') => Promise<{ readonly release: () => Promise<void> }>;
}

/**
 * A switch that keeps the screen on. The system lets go when the page is out of sight, so it is asked again when the
 * page is back. Goes away where no screen can be kept on.
 *
 * @source Screen Wake Lock API, W3C.
 */
export function startScreenSwitch(page: Document): void {
  const place = page.querySelector<HTMLElement>('[data-awake]');
  const wakeLock = (page.defaultView?.navigator as { readonly wakeLock?: WakeLock }).wakeLock;
  if (!place) return;
  if (!wakeLock) return place.remove();
  const button = place.querySelector('input')!;
  let lock: ReturnType<WakeLock['request']> | undefined;

  const keepOn = (): void => {
    const asked = wakeLock.request('screen');
    lock = asked;
    asked.catch(() => {
      if (lock === asked) button.checked = false;
    });
  };
  const letGo = (): void => {
    lock?.then((held) => held.release()).catch(() => undefined);
    lock = undefined;
  };
  button.checked = false;
  button.addEventListener('change', () => (button.checked ? keepOn() : letGo()));
  page.addEventListener('visibilitychange', () => {
    if (button.checked && page.visibilityState === 'visible') keepOn();
  });
  place.hidden = false;
}
