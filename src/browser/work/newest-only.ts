/** Work of which the newest alone counts: to begin some stops what is under way. */
export interface NewestOnly {
  /** @returns Whether nothing newer has begun since. */
  readonly begin: () => () => boolean;
  /** How what has begun is stopped. */
  readonly stopBy: (stop: () => void) => void;
}

export function newestOnly(): NewestOnly {
  let latest = 0;
  let stop = (): void => undefined;
  return {
    begin: () => {
      stop();
      stop = () => undefined;
      const mine = ++latest;
      return () => mine === latest;
    },
    stopBy: (next) => {
      stop = next;
    },
  };
}
