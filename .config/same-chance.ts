import { configureGlobal } from 'fast-check';

/**
 * Properties are tried with the same values on every machine and day, so that a red test is the change's own doing.
 * `CHANCE=$RANDOM npm test` looks elsewhere.
 */
configureGlobal({ seed: Number(process.env['CHANCE'] ?? 20_261_125) });
