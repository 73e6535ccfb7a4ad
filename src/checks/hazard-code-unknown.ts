import type { Check } from './check.ts';

/**
 * A hazard code that is none of GHS, so that nobody would know it for what it is.
 *
 * @source GHS Rev. 10, Annex 3: H2xx physical, H3xx health, H4xx environment, with up to two letters, joined by +.
 *   EUH codes: CLP Regulation (EC) 1272/2008, Annex II.
 */
export const hazardCodeUnknown: Check = {
  code: 'hazard-code-unknown',
  gravity: 'stops',
  find: ({ workspace, origins }) =>
    Object.values(workspace.materials).flatMap(({ id, name, hazards }) =>
      hazards.flatMap((code, i) =>
        code.split('+').every(isCode)
          ? []
          : [
              {
                places: [origins.at(`materials/${id}/hazards/${i}`)] as const,
                facts: { material: name, hazard: code },
              },
            ],
      ),
    ),
};

function isCode(code: string): boolean {
  return /^H[2-4]\d{2}[A-Za-z]{0,2}$/.test(code) || /^EUH\d{3}[A-Z]?$/.test(code);
}
