/** What questions made of lines of tests, of causes and of acts show. */
import type { OperationInput } from '../../bench/operation.ts';
import { entryNamed, whyImpossible } from '../../faults/catalogue.ts';
import type { SiteId } from '../../scenario/aims.ts';
import { aimOf, SITES } from '../../scenario/aims.ts';
import { ACTS } from '../kinds/acts.ts';
import { causesOn } from '../kinds/causes.ts';
import type { Question } from '../question.ts';
import { askedSite } from '../site.ts';
import type { ShownState, Shows } from './state.ts';
import { idOf } from './state.ts';
import MAKES from './testOfMake.json' with { type: 'json' };

const siteIn = ({ values }: Question): SiteId => idOf(values, 'site') as SiteId;
const chosen = (question: Question): string => (question.way === 'choice' ? question.answer : '');
const withCause = (on: SiteId, test: string, fault: string): ShownState => ({
  test,
  on,
  causes: [{ fault }],
});

/** Acts of a log that were safe, up to the first that was not. */
const beforeTheAct: Shows = (question) => {
  if (question.way !== 'choice') return null;
  const log = question.choices.map(({ id }) => id).filter((id): id is keyof typeof ACTS => id in ACTS);
  const at = log.indexOf(question.answer as keyof typeof ACTS);
  const done = log.slice(0, at < 0 ? log.length - 1 : at);
  const next = log[done.length] ?? 'off-locked';
  return {
    test: TEST_OF_ACT[next] ?? 'prove-dead',
    on: siteIn(question),
    left: done.flatMap((id): readonly OperationInput[] => ACTS[id]),
  };
};

/** The test that somebody is in who is about to do it. */
const TEST_OF_ACT: Readonly<Record<string, string>> = {
  'off-locked': 'isolate',
  'off-not-locked': 'isolate',
  'unit-off': 'insulation-circuit',
  'unit-on': 'make-good',
  insulation: 'insulation-circuit',
  continuity: 'pe-circuit',
  'close-cover': 'make-good',
  on: 'energise',
  voltage: 'state-a',
};

/** With the first cause of the table that breaks the line. */
const found: Shows = (question) => {
  const { about } = question;
  const on = siteIn(question);
  const [cause] = Object.entries(causesOn(on)).find(
    ([, broken]) => about !== undefined && broken[about.test]?.includes(about.id) === true,
  ) ?? [null];
  return cause === null || about === undefined ? null : withCause(on, about.test, cause);
};

/** In the first test of the topic that the cause breaks, on the first kind of site where it does. */
const whereItShows: Shows = ({ values, topic }) => {
  const cause = idOf(values, 'cause');
  for (const on of SITES) {
    const tests = Object.keys(causesOn(on)[cause] ?? {});
    const test = tests.find((one) => aimOf(one) === topic) ?? tests[0];
    if (test !== undefined) return withCause(on, test, cause);
  }
  return null;
};

/** Where what a sound make may do is met, by its id in the catalogue. */
const TEST_OF_MAKE: Readonly<Record<string, string>> = MAKES;

const soundMake: Shows = (question) => {
  const make = chosen(question);
  const entry = entryNamed(make);
  const test = TEST_OF_MAKE[make];
  const on = SITES.find((site) => {
    const { papers } = askedSite(site);
    return entry !== undefined && whyImpossible(entry, papers, {}) === null;
  });
  return test === undefined || on === undefined ? null : withCause(on, test, make);
};

export const tests: Readonly<Record<string, Shows>> = {
  'correct-unit': (question) =>
    question.about === undefined ? null : { test: question.about.test, on: siteIn(question) },
  'which-test': (question) => ({ test: chosen(question), on: siteIn(question) }),
  'must-be-absent': (question) => ({ test: chosen(question).split('/')[0] ?? '', on: siteIn(question) }),
  'which-cause': (question) => withCause(siteIn(question), idOf(question.values, 'test'), chosen(question)),
  'ruled-out': (question) => withCause(siteIn(question), idOf(question.values, 'test'), chosen(question)),
  'best-next-test': (question) => withCause(siteIn(question), chosen(question), idOf(question.values, 'a')),
  'reads-the-same': (question) =>
    withCause(siteIn(question), idOf(question.values, 'test'), idOf(question.values, 'cause')),
  'unsafe-act': beforeTheAct,
  'go-on-or-stop': found,
  'whom-to-tell': whereItShows,
  'due-after-repair': (question) => ({ test: chosen(question), on: siteIn(question) }),
  'not-a-fault': soundMake,
};
