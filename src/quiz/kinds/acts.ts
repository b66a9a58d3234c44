/** Questions on what to do: which act of a log was unsafe, whether to go on, whom to tell, what is tested again, what is no fault. */

import type { OperationInput } from '../../bench/operation.ts';
import { operation } from '../../bench/operation.ts';
import { perform } from '../../bench/perform.ts';
import { entryNamed } from '../../faults/catalogue.ts';
import type { Family } from '../../faults/families.ts';
import type { Tell } from '../../faults/fault.ts';
import { TELL } from '../../faults/fault.ts';
import { NOT_FAULT_SOURCES } from '../../faults/notFaultSources.ts';
import { notFaults } from '../../faults/notFaults.ts';
import type { AimId } from '../../scenario/aims.ts';
import { AIMS, aimOf, SITES } from '../../scenario/aims.ts';
import { beginningOf } from '../../scenario/scenario.ts';
import { ACTIONS } from '../../verification/actions.ts';
import { PRACTICE, published } from '../../verification/sources.ts';
import type { TestAction } from '../../verification/testAction.ts';
import { inOrder } from '../asking.ts';
import type { Kind } from '../question.ts';
import { askedSite } from '../site.ts';
import { causesAt } from './causesAt.ts';
/** Faults of a unit that somebody may report by what it does, by their ids in the catalogue. */
import REPORTED from './reported.json' with { type: 'json' };
import { about, drawOne } from './stated.ts';

/** What a log may hold, as somebody would do it; their words go by the same names. */
export const ACTS = {
  'off-locked': [{ op: 'isolate' }],
  'off-not-locked': [{ op: 'isolate', lock: false }],
  'open-cover': [{ op: 'open-cover' }],
  'close-cover': [{ op: 'close-cover' }],
  'prove-at-unit': [{ op: 'prove-dead', at: 'supply' }],
  'prove-at-board': [{ op: 'prove-dead', at: 'origin' }],
  'prove-with-meter': [{ op: 'prove-dead', at: 'supply', tool: 'meter' }],
  'prove-before-only': [{ op: 'prove-dead', at: 'supply', proof: 'before' }],
  'prove-not-at-all': [{ op: 'prove-dead', at: 'supply', proof: 'none' }],
  'unit-off': [{ op: 'disconnect', what: 'unit' }],
  'unit-on': [{ op: 'reconnect', what: 'unit' }],
  insulation: [{ op: 'measure', quantity: 'insulation', between: ['supply.L1', 'supply.PE'], volts: 250 }],
  continuity: [{ op: 'measure', quantity: 'continuity', between: ['supply.L1', 'supply.PE'] }],
  on: [{ op: 'energise' }],
  voltage: [{ op: 'measure', quantity: 'voltage', between: ['outlet.L1', 'outlet.PE'] }],
} as const satisfies Record<string, readonly OperationInput[]>;
type Act = keyof typeof ACTS;

/** Each with one unsafe act, or none; which one it is says the bench. */
export const LOGS: readonly [readonly [Act, ...Act[]], ...(readonly (readonly [Act, ...Act[]])[])] = [
  ['off-locked', 'open-cover', 'prove-at-unit', 'unit-off', 'insulation'],
  ['off-not-locked', 'open-cover', 'prove-at-unit'],
  ['open-cover', 'off-locked', 'prove-at-unit', 'unit-off'],
  ['off-locked', 'open-cover', 'unit-off', 'insulation'],
  ['off-locked', 'open-cover', 'prove-before-only', 'unit-off'],
  ['off-locked', 'open-cover', 'prove-with-meter'],
  ['off-locked', 'prove-at-board', 'open-cover', 'unit-off'],
  ['off-locked', 'open-cover', 'prove-at-unit', 'on'],
  ['off-locked', 'open-cover', 'prove-at-unit', 'unit-off', 'close-cover', 'on'],
  ['off-locked', 'open-cover', 'prove-at-unit', 'unit-off', 'unit-on', 'close-cover', 'on', 'voltage'],
  ['off-locked', 'open-cover', 'prove-at-unit', 'continuity', 'close-cover', 'on'],
  ['off-locked', 'open-cover', 'prove-not-at-all', 'unit-off'],
];

const SAFE = 'none';

/** The acts of a log that are unsafe on this site, by the bench's own rules, with the first of their reasons. */
export function unsafeIn(site: 'single-pme' | 'single-tns', log: readonly Act[]) {
  const { world } = beginningOf(askedSite(site).scenario);
  return log.flatMap((act) => {
    const [first] = ACTS[act].flatMap((one) => perform(world, operation(one)).unsafe);
    return first === undefined ? [] : [{ act, why: first.id }];
  });
}

const unsafeAct: Kind = {
  id: 'unsafe-act',
  topics: ['dead'],
  ask: (dice) => {
    const site = dice.pick('site', ['single-pme', 'single-tns']);
    const log = dice.pick('log', LOGS);
    const [first] = unsafeIn(site, log);
    return inOrder({
      values: { site, why: first?.why ?? '' },
      source: published('EAWR 1989 regs 12 to 14, HSG85, HSE GS38'),
      answer: first?.act ?? SAFE,
      choices: [...log, SAFE].map((id) => ({ id })),
    });
  },
};

/** Aims of which some findings end the work and others do not. */
const WITH_STOPS: readonly AimId[] = [
  'supply',
  'outlet-dead',
  'offer',
  'lets-go',
  'clears',
  'leakage',
  'refuses',
];

/**
 * After which findings a faultless trainee goes no further. Of dead tests nothing is asked: what was found before power
 * is put right before power, whichever test says so.
 */
const goOnOrStop: Kind = {
  id: 'go-on-or-stop',
  topics: WITH_STOPS,
  ask: (dice, topic) => {
    const stops = dice.pick('stop', [true, false]);
    const one = drawOne(
      dice,
      ({ action, line }) =>
        aimOf(action.id) === topic &&
        action.stage !== 'before power' &&
        action.stops.length > 0 &&
        line.right !== 'cant-tell' &&
        action.stops.includes(line.id) === stops,
    );
    return inOrder({
      values: {
        site: one.site,
        test: one.action.id,
        subject: one.line.subject,
        right: one.line.right,
      },
      about: about(one),
      source: PRACTICE,
      answer: stops ? 'stop' : 'go-on',
      choices: ['go-on', 'stop'].map((id) => ({ id })),
    });
  },
};

/** Choices beside the right one. */
const WRONG = 3;

const others = (tell: readonly Tell[]): readonly Tell[] => tell.filter((one) => one !== 'client');

/** Causes of this topic for which, beside the client, one other is told, or nobody. */
const toldOf = (topic: AimId): readonly { readonly cause: string; readonly who: string }[] =>
  [...new Set(SITES.flatMap((site) => causesAt(site, topic)))].flatMap((cause) => {
    const entry = entryNamed(cause);
    if (entry?.kind !== 'fault') return [];
    const [first, ...more] = others(entry.tell);
    return more.length > 0 ? [] : [{ cause, who: first ?? 'nobody' }];
  });

const whomToTell: Kind = {
  id: 'whom-to-tell',
  topics: AIMS.map(({ id }) => id).filter((aim) => new Set(toldOf(aim).map(({ cause }) => cause)).size >= 3),
  ask: (dice, topic) => {
    const told = toldOf(topic);
    const [who] = dice.shuffle('who', [...new Set(told.map((one) => one.who))]);
    const [one] = dice.shuffle(
      'cause',
      told.filter((each) => each.who === who),
    );
    if (one === undefined) throw new Error('nobody is told');
    return inOrder({
      values: { cause: one.cause },
      source: PRACTICE,
      answer: one.who,
      choices: [...others(TELL), 'nobody'].map((id) => ({ id })),
    });
  },
};

const dueAfterRepair: Kind = {
  id: 'due-after-repair',
  topics: AIMS.map(({ id }) => id).filter((aim) => aim !== 'design' && aim !== 'dead'),
  ask: (dice, topic) => {
    for (const site of dice.shuffle('site', SITES)) {
      const { papers } = askedSite(site);
      const tests = ACTIONS.filter(({ applies, restsOn }) => applies(papers) && restsOn.length > 0);
      const pointsTo = ({ expectations, limits }: TestAction, family: Family): boolean =>
        [...expectations(papers), ...limits(papers)].some(({ points }) => points.includes(family));
      for (const cause of dice.shuffle('cause', causesAt(site))) {
        const entry = entryNamed(cause);
        if (entry?.kind !== 'fault') continue;
        const isDue = ({ restsOn }: TestAction): boolean => restsOn.includes(entry.component);
        const due = tests.filter((test) => isDue(test) && aimOf(test.id) === topic);
        if (due.length === 0) continue;
        const free = tests.filter((test) => !isDue(test) && !pointsTo(test, entry.family));
        if (free.length < WRONG) continue;
        const [answer] = dice.shuffle('due', due);
        const shown = [answer, ...dice.shuffle('free', free).slice(0, WRONG)];
        return inOrder({
          values: { site, cause },
          source: published('BS 7671:2018+A2:2022 643.1'),
          answer: answer?.id ?? '',
          choices: dice.shuffle('choices', shown).map((test) => ({ id: test?.id ?? '' })),
        });
      }
    }
    throw new Error('nothing is due');
  },
};

const notAFault: Kind = {
  id: 'not-a-fault',
  topics: ['offer', 'lets-go', 'outlet-dead'],
  ask: (dice) => {
    const [answer] = dice.shuffle('none', notFaults);
    const wrong = dice.shuffle('faults', REPORTED).slice(0, WRONG);
    return inOrder({
      values: { right: answer?.id ?? '' },
      source: published(NOT_FAULT_SOURCES[answer?.id ?? '']?.source ?? ''),
      answer: answer?.id ?? '',
      choices: dice.shuffle('choices', [answer?.id ?? '', ...wrong]).map((id) => ({ id })),
    });
  },
};

export const ACT_KINDS: readonly Kind[] = [unsafeAct, goOnOrStop, whomToTell, dueAfterRepair, notAFault];
