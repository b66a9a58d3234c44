/** Words of the questions on causes, which were acted out on the bench. */
import { causeTitle, inSentence } from '../causeTitles.ts';
import type { QuestionWords } from '../questionWords.ts';
import { testTitle } from '../testTitles.ts';
import { num, str } from '../values.ts';
import { cameOut, siteOf, testOf } from './lines.ts';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const causes: Readonly<Record<string, QuestionWords>> = {
  'which-cause': {
    stem: (v) => `${siteOf(v)} In the test ${testOf(v)} ${cameOut(v, false)}. Which of these causes fits?`,
    named: 'causes',
    working: (_, answer) => [
      `With “${inSentence(answer)}” this line comes out wrong. With each of the others the whole test reads as it should.`,
    ],
    why: '',
  },
  'ruled-out': {
    stem: (v) =>
      `${siteOf(v)} In the test ${testOf(v)} ${cameOut(v, true)}. Which of these causes does that rule out?`,
    named: 'causes',
    working: (_, answer) => [
      `“${capital(inSentence(answer))}” would have made this line come out wrong. With each of the others the test reads as it did.`,
    ],
    why: '',
  },
  'best-next-test': {
    stem: (v) =>
      `${siteOf(v)} Four causes are left: ${['a', 'b', 'c', 'd'].map((one) => inSentence(causeTitle(str(v, one)))).join('; ')}. Which test tells most of them apart?`,
    working: (v) =>
      Object.keys(v)
        .filter((key) => key.startsWith('left '))
        .map(
          (key) =>
            `${testTitle(key.slice('left '.length))}: ${num(v, key) === 1 ? 'one is left' : `${num(v, key)} are left`} at worst`,
        ),
    why: 'Each of the four causes was acted out in each of these tests. The best test leaves the fewest causes that read alike, whichever cause it is.',
  },
  'reads-the-same': {
    stem: (v) =>
      `${siteOf(v)} In the test ${testOf(v)}, which of these makes the same lines come out wrong as “${inSentence(causeTitle(str(v, 'cause')))}”?`,
    named: 'causes',
    working: (v, answer) => [
      `Acted out in the test, “${inSentence(answer)}” and “${inSentence(causeTitle(str(v, 'cause')))}” make the same lines come out wrong. Each of the others makes other ones.`,
    ],
    why: 'What reads the same in one test has to be parted by another, or by looking. Until then either may be put right in vain.',
  },
};
