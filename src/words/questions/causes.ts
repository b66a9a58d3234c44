/** Words of the questions on causes, which were acted out on the bench. */
import type { Values } from '../../verification/testAction.ts';
import { causeTitle } from '../causeTitles.ts';
import type { QuestionWords } from '../questionWords.ts';
import { testTitle } from '../testTitles.ts';
import { num, str } from '../values.ts';
import { siteOf, testOf } from './lines.ts';

const wasWrong = (v: Values): string =>
  str(v, 'right') === 'should' ? 'this should be so, and was not' : 'this should not be so, and was';
const wasRight = (v: Values): string =>
  str(v, 'right') === 'should' ? 'this should be so, and was' : 'this should not be so, and was not';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
/** Inside a sentence: its own capitals stay where they are an abbreviation. */
const inside = (title: string): string =>
  /^[A-Z][a-z]/.test(title) ? title.charAt(0).toLowerCase() + title.slice(1) : title;

export const causes: Readonly<Record<string, QuestionWords>> = {
  'which-cause': {
    stem: (v) => `${siteOf(v)} In the test ${testOf(v)}: ${wasWrong(v)}. Which of these fits?`,
    named: 'causes',
    working: (_, answer) => [
      `With “${inside(answer)}” this line comes out wrong. With each of the others the whole test reads as it should.`,
    ],
    why: '',
  },
  'ruled-out': {
    stem: (v) =>
      `${siteOf(v)} In the test ${testOf(v)}: ${wasRight(v)}. Which of these is ruled out by that?`,
    named: 'causes',
    working: (_, answer) => [
      `“${capital(inside(answer))}” would have made this line come out wrong. With each of the others the test reads as it did.`,
    ],
    why: '',
  },
  'best-next-test': {
    stem: (v) =>
      `${siteOf(v)} Four causes are left: ${['a', 'b', 'c', 'd'].map((one) => inside(causeTitle(str(v, one)))).join('; ')}. Which test parts them best?`,
    working: (v) =>
      Object.keys(v)
        .filter((key) => key.startsWith('left '))
        .map((key) => `${testTitle(key.slice('left '.length))}: ${num(v, key)} left at worst`),
    why: 'Each of the four was acted out in each of these tests. The best one leaves the fewest that read alike, whichever of them it is.',
  },
  'reads-the-same': {
    stem: (v) =>
      `${siteOf(v)} In the test ${testOf(v)}, which of these breaks the same lines as “${inside(causeTitle(str(v, 'cause')))}”?`,
    named: 'causes',
    working: (v, answer) => [
      `Acted out in the test, “${inside(answer)}” and “${inside(causeTitle(str(v, 'cause')))}” break the same lines. Each of the others breaks other ones.`,
    ],
    why: 'What reads the same in one test has to be parted by another, or by looking. Until then either may be put right in vain.',
  },
};
