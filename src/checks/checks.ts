import type { Diagnostic, Place } from '../core/diagnostic.ts';
import { severityFor } from '../core/diagnostic.ts';
import { type ReviewStatus, reviewStatuses } from '../core/model/reviewed.ts';
import type { Module } from '../core/model/module.ts';
import type { Workspace } from '../core/model/workspace.ts';
import type { Check, Finding } from './check.ts';
import { makeContext, type ToCheck } from './lookup/context.ts';
import { plansOf } from './lookup/plans.ts';
import { guidesTouched } from './lookup/usage.ts';
import { agendaDoesNotAddUp } from './agenda-does-not-add-up.ts';
import { agendaItemWithoutTime } from './agenda-item-without-time.ts';
import { agendaOutOfOrder } from './agenda-out-of-order.ts';
import { allergensUnsaid } from './allergens-unsaid.ts';
import { answerNotAmongChoices } from './answer-not-among-choices.ts';
import { basisMismatch } from './basis-mismatch.ts';
import { cautionInTextAlone } from './caution-in-text-alone.ts';
import { cautionIncomplete } from './caution-incomplete.ts';
import { confidenceAsAssessment } from './confidence-as-assessment.ts';
import { currencyWithoutRate } from './currency-without-rate.ts';
import { dangerInNoStep } from './danger-in-no-step.ts';
import { filmWithoutWords } from './film-without-words.ts';
import { goesOffInSession } from './goes-off-in-session.ts';
import { guideInItself } from './guide-in-itself.ts';
import { hazardCodeUnknown } from './hazard-code-unknown.ts';
import { hazardWithoutCaution } from './hazard-without-caution.ts';
import { hazardWithoutControl } from './hazard-without-control.ts';
import { headingNearlyForStaff } from './heading-nearly-for-staff.ts';
import { headingsOutOfOrder } from './headings-out-of-order.ts';
import { holdLimitBroken } from './hold-limit-broken.ts';
import { holdLimitWithoutNext } from './hold-limit-without-next.ts';
import { imageWithoutText } from './image-without-text.ts';
import { linkOutsideItsGuide } from './link-outside-its-guide.ts';
import { looksClinical } from './looks-clinical.ts';
import { materialsMustNotMeet } from './materials-must-not-meet.ts';
import { missingAgendaItem } from './missing-agenda-item.ts';
import { missingApproval } from './missing-approval.ts';
import { missingCare } from './missing-care.ts';
import { missingClearingTime } from './missing-clearing-time.ts';
import { missingDataSheet } from './missing-data-sheet.ts';
import { missingForReview } from './missing-for-review.ts';
import { missingFromScript } from './missing-from-script.ts';
import { missingImage } from './missing-image.ts';
import { missingModuleFile } from './missing-module-file.ts';
import { missingModuleText } from './missing-module-text.ts';
import { missingPack } from './missing-pack.ts';
import { missingPrice } from './missing-price.ts';
import { mixMakesNothing } from './mix-makes-nothing.ts';
import { moduleFileKindUnknown } from './module-file-kind-unknown.ts';
import { modulesInACircle } from './modules-in-a-circle.ts';
import { moreThanThereIs } from './more-than-there-is.ts';
import { moreToolsThanOwned } from './more-tools-than-owned.ts';
import { noticeOfInjury } from './notice-of-injury.ts';
import { objectiveWithoutAssessment } from './objective-without-assessment.ts';
import { objectiveWithoutPractice } from './objective-without-practice.ts';
import { oldDataSheet } from './old-data-sheet.ts';
import { oldPrice } from './old-price.ts';
import { otherVersionOfGuide } from './other-version-of-guide.ts';
import { passMarkIncomplete } from './pass-mark-incomplete.ts';
import { passMarkUnsaid } from './pass-mark-unsaid.ts';
import { patternNotToSize } from './pattern-not-to-size.ts';
import { pictureKindUnknown } from './picture-kind-unknown.ts';
import { pieceTooLarge } from './piece-too-large.ts';
import { piecesMixed } from './pieces-mixed.ts';
import { practiceTooShort } from './practice-too-short.ts';
import { preparationOverPromise } from './preparation-over-promise.ts';
import { priceOfADayToCome } from './price-of-a-day-to-come.ts';
import { proseDisagrees } from './prose-disagrees.ts';
import { readingLongerThanStated } from './reading-longer-than-stated.ts';
import { readingTooHard } from './reading-too-hard.ts';
import { resetLongerThanChangeOver } from './reset-longer-than-change-over.ts';
import { reviewOverdue } from './review-overdue.ts';
import { rowOfUnknownLevel } from './row-of-unknown-level.ts';
import { scaleWithoutAnchors } from './scale-without-anchors.ts';
import { servesNoObjective } from './serves-no-objective.ts';
import { sharesDoNotAddUp } from './shares-do-not-add-up.ts';
import { skillOnlyAskedAbout } from './skill-only-asked-about.ts';
import { statedBuildTimeWrong } from './stated-build-time-wrong.ts';
import { statedCostWrong } from './stated-cost-wrong.ts';
import { statedHandsOnWrong } from './stated-hands-on-wrong.ts';
import { stationInNoAgenda } from './station-in-no-agenda.ts';
import { stationOfUnknownLevel } from './station-of-unknown-level.ts';
import { stationTwiceInACircuit } from './station-twice-in-a-circuit.ts';
import { stepWithoutHeading } from './step-without-heading.ts';
import { stepWithoutTime } from './step-without-time.ts';
import { stepsInACircle } from './steps-in-a-circle.ts';
import { storedWithClinicalStock } from './stored-with-clinical-stock.ts';
import { surveyInNoAgenda } from './survey-in-no-agenda.ts';
import { tooFewInstructors } from './too-few-instructors.ts';
import { tooFewSeats } from './too-few-seats.ts';
import { toolHeldBackwards } from './tool-held-backwards.ts';
import { undatedPrice } from './undated-price.ts';
import { unitMismatch } from './unit-mismatch.ts';
import { unknownAssessment } from './unknown-assessment.ts';
import { unknownCaution } from './unknown-caution.ts';
import { unknownCircuitStation } from './unknown-circuit-station.ts';
import { unknownControl } from './unknown-control.ts';
import { unknownMaterial } from './unknown-material.ts';
import { unknownModule } from './unknown-module.ts';
import { unknownObjective } from './unknown-objective.ts';
import { unknownOtherGuide } from './unknown-other-guide.ts';
import { unknownPattern } from './unknown-pattern.ts';
import { unknownPeople } from './unknown-people.ts';
import { unknownPiece } from './unknown-piece.ts';
import { unknownPractice } from './unknown-practice.ts';
import { unknownScriptSentence } from './unknown-script-sentence.ts';
import { unknownSetting } from './unknown-setting.ts';
import { unknownStep } from './unknown-step.ts';
import { unknownSupplier } from './unknown-supplier.ts';
import { unknownTime } from './unknown-time.ts';
import { unknownTool } from './unknown-tool.ts';
import { unlistedMaterial } from './unlisted-material.ts';
import { unlistedStation } from './unlisted-station.ts';
import { unusedMaterial } from './unused-material.ts';
import { unusualCost } from './unusual-cost.ts';
import { unusualHandsOn } from './unusual-hands-on.ts';
import { unusualLife } from './unusual-life.ts';
import { vapourNearIgnition } from './vapour-near-ignition.ts';
import { vapourOutlastsHoldLimit } from './vapour-outlasts-hold-limit.ts';
import { verbNotObservable } from './verb-not-observable.ts';
import { weightsDoNotAddUp } from './weights-do-not-add-up.ts';

/** Every check, by code. To add one: its file, its row here, its sentence in `words`, its case in the tests. */
export const checks: readonly Check[] = Object.freeze([
  agendaDoesNotAddUp,
  agendaItemWithoutTime,
  agendaOutOfOrder,
  allergensUnsaid,
  answerNotAmongChoices,
  basisMismatch,
  cautionInTextAlone,
  cautionIncomplete,
  confidenceAsAssessment,
  currencyWithoutRate,
  dangerInNoStep,
  filmWithoutWords,
  goesOffInSession,
  guideInItself,
  hazardCodeUnknown,
  hazardWithoutCaution,
  hazardWithoutControl,
  headingNearlyForStaff,
  headingsOutOfOrder,
  holdLimitBroken,
  holdLimitWithoutNext,
  imageWithoutText,
  linkOutsideItsGuide,
  looksClinical,
  materialsMustNotMeet,
  missingAgendaItem,
  missingApproval,
  missingCare,
  missingClearingTime,
  missingDataSheet,
  missingForReview,
  missingFromScript,
  missingImage,
  missingModuleFile,
  missingModuleText,
  missingPack,
  missingPrice,
  mixMakesNothing,
  moduleFileKindUnknown,
  modulesInACircle,
  moreThanThereIs,
  moreToolsThanOwned,
  noticeOfInjury,
  objectiveWithoutAssessment,
  objectiveWithoutPractice,
  oldDataSheet,
  oldPrice,
  otherVersionOfGuide,
  passMarkIncomplete,
  passMarkUnsaid,
  patternNotToSize,
  pictureKindUnknown,
  pieceTooLarge,
  piecesMixed,
  practiceTooShort,
  preparationOverPromise,
  priceOfADayToCome,
  proseDisagrees,
  readingLongerThanStated,
  readingTooHard,
  resetLongerThanChangeOver,
  reviewOverdue,
  rowOfUnknownLevel,
  scaleWithoutAnchors,
  servesNoObjective,
  sharesDoNotAddUp,
  skillOnlyAskedAbout,
  statedBuildTimeWrong,
  statedCostWrong,
  statedHandsOnWrong,
  stationInNoAgenda,
  stationOfUnknownLevel,
  stationTwiceInACircuit,
  stepWithoutHeading,
  stepWithoutTime,
  stepsInACircle,
  storedWithClinicalStock,
  surveyInNoAgenda,
  tooFewInstructors,
  tooFewSeats,
  toolHeldBackwards,
  undatedPrice,
  unitMismatch,
  unknownAssessment,
  unknownCaution,
  unknownCircuitStation,
  unknownControl,
  unknownMaterial,
  unknownModule,
  unknownObjective,
  unknownOtherGuide,
  unknownPattern,
  unknownPeople,
  unknownPiece,
  unknownPractice,
  unknownScriptSentence,
  unknownSetting,
  unknownStep,
  unknownSupplier,
  unknownTime,
  unknownTool,
  unlistedMaterial,
  unlistedStation,
  unusedMaterial,
  unusualCost,
  unusualHandsOn,
  unusualLife,
  vapourNearIgnition,
  vapourOutlastsHoldLimit,
  verbNotObservable,
  weightsDoNotAddUp,
]);

/**
 * All that is wrong with a workspace that could be read, each thing once, in the order of the table. What reading has
 * told already (`unread`) is passed over, and stated figures are compared only where a plan can be made.
 */
export function runChecks(of: ToCheck): readonly Diagnostic[] {
  const context = makeContext(of);
  const alone = checks
    .filter(({ needsPlan }) => !needsPlan)
    .flatMap((check) => found(check, check.find(context), of));
  const stopped = new Set(alone.filter(({ stops }) => stops).flatMap(({ guides }) => guides));
  const isCompared = (id: string): boolean => !stopped.has(id) && (of.compared?.includes(id) ?? true);
  const planned = { ...context, planOf: plansOf(context, isCompared) };
  const compared = checks
    .filter(({ needsPlan }) => needsPlan)
    .flatMap((check) => found(check, check.find(planned), of));
  return [...alone, ...compared].map(({ diagnostic }) => diagnostic);
}

interface Found {
  readonly diagnostic: Diagnostic;
  /** Ids of the guides that it touches. */
  readonly guides: readonly string[];
  readonly stops: boolean;
}

/** The findings of one check; what was found at several levels stands once, as at the first. */
function found(check: Check, findings: readonly Finding[], { workspace }: ToCheck): readonly Found[] {
  const first = new Map<string, Found>();
  for (const finding of findings) {
    const [{ file, line, column }] = finding.places;
    const key = [finding.variant ?? '', file, line, column].join('\n');
    if (!first.has(key)) first.set(key, weighed(check, finding, workspace));
  }
  return [...first.values()];
}

/** A finding in shared files weighs as in the strictest guide that uses them; other places only explain it. */
function weighed(check: Check, finding: Finding, workspace: Workspace): Found {
  const { variant, facts, gravity = check.gravity } = finding;
  const places = eachOnce(finding.places);
  const files = places.map(({ file }) => file).filter((file) => kindOf(file) === kindOf(places[0]!.file));
  const guides = files.flatMap((file) => guidesTouched(file, workspace));
  const touched = [...guides, ...files.flatMap((file) => moduleOf(file, workspace))];
  const severity = severityFor(gravity, strictest(touched.map(({ status }) => status)));
  const diagnostic = {
    code: check.code,
    ...(variant === undefined ? {} : { variant }),
    severity,
    places,
    facts,
  };
  return { diagnostic, guides: guides.map(({ id }) => id), stops: gravity === 'stops' };
}

/** The module whose file it is. */
function moduleOf(file: string, { modules }: Workspace): readonly Module[] {
  const [, id = ''] = /^modules\/([^/]+)\/module\.md$/.exec(file) ?? [];
  const module = modules[id];
  return module ? [module] : [];
}

const kindOf = (file: string): string => file.split('/')[0]!;

/** At several levels the same places come up again. */
function eachOnce(places: readonly Place[]): readonly Place[] {
  const keys = places.map(({ file, line, column }) => [file, line, column].join('\n'));
  return places.filter((_, i) => keys.indexOf(keys[i]!) === i);
}

function strictest(statuses: readonly ReviewStatus[]): ReviewStatus {
  return reviewStatuses.findLast((status) => statuses.includes(status)) ?? 'draft';
}
