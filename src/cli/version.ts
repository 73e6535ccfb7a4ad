declare const BENCHWRIGHT_VERSION: string | undefined;

/** The version that the build put in; the sources themselves have none. */
export const version = typeof BENCHWRIGHT_VERSION === 'string' ? BENCHWRIGHT_VERSION : 'unbuilt';
