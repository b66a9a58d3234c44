/** Words of the questions that are made of what the tests say of a correct unit. */
import type { SiteId } from '../../scenario/aims.ts';
import type { Values } from '../../verification/testAction.ts';
import type { QuestionWords } from '../questionWords.ts';
import { SUBJECT_WORDS } from '../subjects.ts';
import { testTitle } from '../testTitles.ts';
import { str } from '../values.ts';

const SITE: Readonly<Record<SiteId, string>> = {
  'single-pme': 'A single-phase tethered unit on PME (TN-C-S).',
  'single-tns': 'A single-phase tethered unit on TN-S.',
  'single-tt': 'A single-phase tethered unit on TT.',
  'three-socket': 'A three-phase unit with a socket-outlet on TN-S.',
  'single-island': 'A single-phase tethered unit on its own electrode (TT), at a house on PME.',
  'single-shared':
    'A single-phase tethered unit on PME (TN-C-S), beside a second charging point on the same service.',
};

/** Which kind of installation it is. */
export const siteOf = (v: Values): string => SITE[str(v, 'site') as SiteId];
export const testOf = (v: Values): string => `“${testTitle(str(v, 'test'))}”`;

const subjectOf = (v: Values): string => SUBJECT_WORDS[str(v, 'subject') as keyof typeof SUBJECT_WORDS];

/** How a line came out that a test was about; what the line says stands behind. */
export const cameOut = (v: Values, asItShould: boolean): string => {
  const shouldBe = str(v, 'right') === 'should';
  if (asItShould) return shouldBe ? 'this was so, as it should be' : 'this was not so, as it should be';
  return shouldBe ? 'this was not so, though it should be' : 'this was so, though it should not be';
};

/** The line that they are about, its reason and its source are the bench's own and stand behind (src/words/questions.ts). */
export const lines: Readonly<Record<string, QuestionWords>> = {
  'correct-unit': {
    stem: (v) =>
      `${siteOf(v)} In the test ${testOf(v)}: should this be so, should it not, or can the test not tell?`,
    working: () => [],
    why: '',
  },
  'which-test': {
    stem: (v) => `${siteOf(v)} The test ${testOf(v)} cannot tell this. Which of these tests does?`,
    working: () => [],
    why: '',
  },
  'must-be-absent': {
    stem: (v) => `${siteOf(v)} Which of these must ${subjectOf(v)} not do?`,
    working: () => [],
    why: '',
  },
};
