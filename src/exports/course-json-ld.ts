import type { Preparation } from '../core/model/module.ts';
import type { Program } from '../core/model/program.ts';
import { isoDuration } from './how-to-json-ld.ts';

/** What a module says, in finished words; minutes are whole. */
export interface CourseTexts {
  readonly name: string;
  readonly description: string;
  readonly version: string;
  /** SPDX. */
  readonly licence: string;
  readonly audience: string;
  /** Modules that come before. */
  readonly after: readonly string[];
  /** What trainees will be able to do, by objective; those that are assessed among them. */
  readonly teaches: readonly string[];
  readonly assesses: readonly string[];
  readonly booked?: number;
  /** What is read, watched or done before, and the guides of the models. */
  readonly resources: readonly {
    readonly kind: Preparation['kind'] | 'guide';
    readonly name: string;
    readonly minutes?: number;
    readonly address?: string;
  }[];
  /** Where its page will stand on the web, if that is known. */
  readonly address?: string;
}

/**
 * A module as schema.org's Course, with what trainees prepare with and the guides of its models as LearningResources,
 * for other programs to read in its page.
 *
 * Every resource is part of the course, and the course of the program's own site where that is known.
 *
 * @source schema.org 23.0: Course (a kind of LearningResource), teaches, assesses, educationalLevel, timeRequired,
 *   coursePrerequisites, isPartOf; from memory. ISO 8601-1 (2019) for durations.
 */
export function courseJsonLd(texts: CourseTexts, program: Program) {
  const { address } = texts;
  const course = `${address ?? ''}#course`;
  return {
    '@context': 'https://schema.org',
    '@graph': [
      {
        '@type': 'Course',
        '@id': course,
        name: texts.name,
        description: texts.description,
        inLanguage: program.locale,
        ...(address === undefined ? {} : { url: address }),
        ...unlessEmpty('version', texts.version),
        ...unlessEmpty('license', texts.licence && `https://spdx.org/licenses/${texts.licence}`),
        ...unlessEmpty('educationalLevel', texts.audience),
        ...(texts.audience === '' ? {} : { audience: audienceOf(texts.audience) }),
        ...unlessEmpty('coursePrerequisites', texts.after),
        ...unlessEmpty('teaches', texts.teaches),
        ...unlessEmpty('assesses', texts.assesses),
        ...(texts.booked === undefined ? {} : { timeRequired: isoDuration(texts.booked) }),
        provider: { '@type': 'Organization', name: program.name },
        ...(program.address === undefined
          ? {}
          : { isPartOf: { '@type': 'WebSite', name: program.name, url: program.address } }),
      },
      ...texts.resources.map(({ kind, name, minutes, address: url }) => ({
        '@type': 'LearningResource',
        name,
        learningResourceType: kind,
        ...(minutes === undefined ? {} : { timeRequired: isoDuration(minutes) }),
        ...(url === undefined ? {} : { url }),
        isPartOf: { '@id': course },
      })),
    ],
  };
}

function audienceOf(audienceType: string) {
  return { '@type': 'EducationalAudience', educationalRole: 'student', audienceType };
}

function unlessEmpty(name: string, value: string | readonly string[]) {
  return value.length === 0 ? {} : { [name]: value };
}
