/** What lines and causes are about, and what lies behind a wrong prediction, in words. */
import type { Misconception, TopicId } from '../attempt/marks/debrief.ts';
import type { Calibrated } from '../attempt/marks/recordSums.ts';
import type { Family } from '../faults/families.ts';

export const FAMILY_WORDS: Readonly<Record<Family, string>> = {
  'protective-conductor': 'protective conductor',
  'supply-wiring': 'supply and wiring',
  design: 'design',
  switching: 'switching',
  pilot: 'pilot',
  'proximity-retention': 'proximity and retention',
  'residual-direct': 'residual and direct current',
  insulation: 'insulation',
  mechanical: 'mechanical and visible',
  tester: 'your own tester',
};

export const topicText = (topic: TopicId): string =>
  topic === 'untold' ? 'what a test cannot tell' : FAMILY_WORDS[topic];

const MISCONCEPTION_WORDS: Readonly<Record<Misconception, string>> = {
  'reads-too-much': 'takes a test to tell what it cannot',
  'expects-a-fault': 'expects what must not be',
  'forbids-what-is-sound': 'rules out what a correct unit does',
  'misses-what-it-tells': 'misses what the test does tell',
};

/** What was taken wrongly, and about what; one that is always about the same says it by itself. */
export const misconceptionText = (misconception: Misconception, topic: TopicId): string =>
  misconception === 'reads-too-much'
    ? MISCONCEPTION_WORDS[misconception]
    : `${MISCONCEPTION_WORDS[misconception]}: ${topicText(topic)}`;

/** How often a sureness was right, beside what it claims. */
export const COMPARED_WORDS: Readonly<Record<Calibrated['compared'], string>> = {
  'not-used': 'not used',
  'few-lines': 'few lines yet',
  'as-often': 'right as often as said',
  'less-often': 'right less often than said',
  'more-often': 'right more often than said',
};
