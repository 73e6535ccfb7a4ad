import type { Question, SurveyItem } from '../../core/model/module.ts';
import { readCount } from '../../core/quantity/read.ts';
import type { ModuleShape } from '../shape/module-shape.ts';
import { field, given, read, readEach, readNamed, type TextReader, type Written } from '../sheet/written.ts';
import { means, oneOf, oneOfThese, readId, readWords } from '../values/plain-words.ts';

/** A question asked of everybody, before, after or both; with a scale, or answered in words. */
export function readSurveyItem(
  from: Written<NonNullable<ModuleShape['surveys']>['items'][number]>,
): SurveyItem {
  const asked = readEach(from, 'asked', oneOfThese(['before', 'after'] as const));
  return given<SurveyItem>({
    id: read(from, 'id', readId) ?? '',
    ask: read(from, 'ask', readWords) ?? '',
    scale: field(from, 'scale') && readNamed(from, 'scale', readWords),
    asked: asked.length > 0 ? asked : ['after'],
    of: readEach(from, 'of', readId),
  });
}

/** A question that trainees answer alone. The right choice goes by its number, or by its own words. */
export function readQuestion(from: Written<NonNullable<ModuleShape['self-check']>[number]>): Question {
  const choices = readEach(from, 'choices', readWords);
  return given<Question>({
    id: read(from, 'id', readId),
    ask: read(from, 'ask', readWords) ?? '',
    choices,
    right: read(from, 'right', choiceAmong(choices)) ?? 1,
    because: read(from, 'because', readWords) ?? '',
    objectives: readEach(from, 'objectives', readId),
  });
}

/** Any, where the choices themselves could not be read: that is told already. */
function choiceAmong(choices: readonly string[]): TextReader<number> {
  const byWords = oneOf(Object.fromEntries(choices.map((choice, i) => [choice, i + 1])), choices);
  return (text) => {
    if (/^\d+$/.test(text.trim())) return readCount(text);
    return choices.length === 0 ? means(1) : byWords(text);
  };
}
