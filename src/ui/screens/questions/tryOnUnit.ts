/** A job of the question's aim, on the kind of site that it is about where it names one. */
import type { Question } from '../../../quiz/question.ts';
import { isSite } from '../../../scenario/aims.ts';
import { anySeed } from '../../flow/aimLinks.ts';

export function tryOnUnit({ topic, values }: Pick<Question, 'topic' | 'values'>): string {
  const { site } = values;
  const at = typeof site === 'string' && isSite(site) ? `/${site}` : '';
  return `#/aim/${topic}${at}?seed=${anySeed()}&rung=2`;
}
