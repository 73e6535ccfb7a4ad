import type { Program } from '../core/model/program.ts';
import { roundMoney } from '../core/money/money.ts';
import type { Plan } from '../core/plan/result.ts';
import { exact } from '../core/quantity/exact.ts';

/** What a guide says, in finished words. */
export interface HowToTexts {
  readonly name: string;
  readonly description: string;
  /** "4 models" */
  readonly makes: string;
  readonly version: string;
  /** SPDX. */
  readonly licence: string;
  readonly supplies: readonly { readonly name: string; readonly amount: string }[];
  readonly steps: readonly { readonly id: string; readonly name: string; readonly text: string }[];
  /** Names of tools by id. */
  readonly tools: Readonly<Record<string, string>>;
  /** Where its page will stand on the web, if that is known. */
  readonly address?: string;
}

/**
 * A guide as schema.org's HowTo, for other programs to read in its page.
 *
 * The cost is what the good models use up, not what whole packs come to; where a price is missing it stands as the
 * least it can be. The time is that of the clock from the first hands-on to ready. The address of a step is relative
 * where nobody says where the site will stand.
 *
 * @param plan  Of that guide alone.
 * @source schema.org 23.0: HowTo, HowToSupply, HowToTool, HowToStep, MonetaryAmount, CreativeWork; ISO 8601-1 (2019)
 *   for the duration, in hours and minutes since a day of a clock may have 23 of them.
 */
export function howToJsonLd(plan: Plan, texts: HowToTexts, program: Program) {
  const { name, description, makes, version, licence, supplies, steps, address } = texts;
  return {
    '@context': 'https://schema.org',
    '@type': 'HowTo',
    name,
    description,
    inLanguage: program.locale,
    ...(address === undefined ? {} : { url: address }),
    ...(version === '' ? {} : { version }),
    ...(licence === '' ? {} : { license: `https://spdx.org/licenses/${licence}` }),
    yield: makes,
    ...('none' in plan.schedule ? {} : { totalTime: isoDuration(plan.schedule.buildTime) }),
    estimatedCost: costOf(plan, program),
    supply: supplies.map(({ name: of, amount }) => ({
      '@type': 'HowToSupply',
      name: of,
      ...(amount === '' ? {} : { requiredQuantity: amount }),
    })),
    tool: plan.tools.map(({ tool, peak }) => ({
      '@type': 'HowToTool',
      name: texts.tools[tool] ?? tool,
      requiredQuantity: peak,
    })),
    step: steps.map(({ id, name: of, text }, i) => ({
      '@type': 'HowToStep',
      position: i + 1,
      name: of,
      text,
      url: `${address ?? ''}#step-${id}`,
    })),
  };
}

function costOf({ cost, lines }: Plan, { currency, minorDigits }: Program) {
  const { wanted, spares } = lines[0]!;
  const used = cost.each[0]!.used.mul(exact(wanted + spares));
  const value = Number(roundMoney(used, minorDigits[currency] ?? 2, 'half-up'));
  return { '@type': 'MonetaryAmount', currency, [cost.complete ? 'value' : 'minValue']: value };
}

/** `PT54H30M`, `PT0M`. */
export function isoDuration(minutes: number): string {
  const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
  const parts = `${hours > 0 ? `${hours}H` : ''}${rest > 0 ? `${rest}M` : ''}`;
  return `PT${parts || '0M'}`;
}

/** A value as the content of a script element of data: no text of it can close the element, or look like markup. */
export function scriptData(value: unknown): string {
  return JSON.stringify(value).replace(/</g, '\\u003c');
}
