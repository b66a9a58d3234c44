/**
 * Attempt files that were changed to earn what was not learnt, each with its chain made again as somebody able would
 * make it; what `mark` and the page then say of it. All are made of one attempt on mill-race, a unit that is not sound.
 */
import type { Attempt, Entry, Noted } from '../../src/attempt/record/attempt.ts';
import { appended, headOf } from '../../src/attempt/record/attempt.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { scenarioNamed } from './scenarios.ts';
import { attemptBy, faultlessAttempt } from './trainee.ts';

export const { scenario, file } = scenarioNamed('mill-race');
const whole = faultlessAttempt(scenario, file);
/** Honest, and worth little: three tests, every line answered alike, and it accepts the unit. */
const poor = attemptBy(scenario, file, {
  answer: () => 'should',
  tests: (all) => all.slice(0, 3),
  conclude: (right) => ({
    ...right,
    verdict: 'not-fit',
    cause: null,
    family: null,
    findings: [],
  }),
});

/** The same entries in this order, under hashes that fit. */
function rechained(attempt: Attempt, entries: readonly Entry[] = attempt.entries): Attempt {
  return entries.reduce<Attempt>(
    (log, { hash: _, at, wall, ...noted }) => appended(log, noted as Noted, at, wall),
    { ...attempt, entries: [] },
  );
}

/** Another scenario in the place of the file's own. */
const carrying = (change: object, attempt: Attempt = whole): Attempt =>
  rechained({ ...attempt, scenario: { ...(attempt.scenario as object), ...change } });

function onASoundUnit(): Attempt {
  const made = { ...(file as object), faults: [] };
  const read = readScenario(made);
  if (!read.ok) throw new Error('the scenario without its fault cannot be read');
  return faultlessAttempt(read.scenario, made);
}

const { entries } = whole;
const isOf = (kind: Entry['kind']) => (entry: Entry) => entry.kind === kind;
const end = entries.findIndex(isOf('conclusion'));
const conclusion = entries[end] as Entry;
const before = entries.slice(0, end);
const wrongly = {
  ...conclusion,
  verdict: 'fit',
  cause: 'nothing',
  family: null,
  findings: [],
} as unknown as Entry;
const without = (kind: Entry['kind']) => before.filter((entry) => entry.kind !== kind);
const only = (kind: Entry['kind']) => before.filter(isOf(kind));

export interface Cheat {
  readonly name: string;
  readonly attempt: unknown;
  /** What `mark` says by the scenario that the file carries: fields, and lines among `differs` and `untimely`. */
  readonly marked: Readonly<Record<string, unknown>>;
  readonly told: readonly RegExp[];
  /** And held against the one that the college gave out. */
  readonly against: Readonly<Record<string, unknown>>;
  /** What stands on the page. */
  readonly onPage: readonly (string | RegExp)[];
}

const KNOWN = { scenario: { id: 'mill-race', from: 'known' } };
const CARRIED = { scenario: { id: 'mill-race', from: 'carried' } };
const NOT_THE_SHIPPED = 'The scenario in this file is not the one of that name that comes with this page.';
const WRONG_TIME = 'These came at the wrong time and earn nothing.';
const DIFFER = 'The file and its replay differ.';

export const CHEATS: readonly Cheat[] = [
  {
    name: 'its fault was taken out of the scenario',
    attempt: onASoundUnit(),
    marked: { ...CARRIED, total: 100, passed: true },
    told: [
      /^scenario\.faults\[0\]: the file says nothing, the one that comes with the program \{"fault":"pe-joint"/,
    ],
    against: { passed: false, gates: { verdict: false } },
    onPage: [NOT_THE_SHIPPED, /scenario\.faults\[0\]: the file says nothing/],
  },
  {
    name: 'no total is needed to pass: the hurdles stand all the same',
    attempt: carrying({ marking: { pass: 0 } }, poor),
    marked: { ...CARRIED, pass: 0, passed: false },
    told: [/^scenario\.marking: the file says \{"pass":0\}, .* nothing$/],
    against: { pass: 70, passed: false },
    onPage: [NOT_THE_SHIPPED, /pass mark\s*0, with every gate and hurdle met/],
  },
  {
    name: 'a gate was set aside',
    attempt: carrying({ marking: { setAside: [{ gate: 'insulation-live', reason: 'mine' }] } }),
    marked: { ...CARRIED, gates: { setAside: [{ gate: 'insulation-live', reason: 'mine' }] } },
    told: [/^scenario\.marking: the file says \{"setAside"/],
    against: { gates: { setAside: [] } },
    onPage: [NOT_THE_SHIPPED, /insulation test on a live circuit: mine/],
  },
  {
    name: 'a second conclusion, after the debrief',
    attempt: rechained(whole, [...before, wrongly, conclusion]),
    marked: { ...KNOWN, parts: { diagnosis: 0 }, gates: { verdict: false }, passed: false },
    told: [new RegExp(`^entries\\[${end + 1}\\]: after the conclusion: earns nothing$`)],
    against: { passed: false },
    onPage: [WRONG_TIME, `Entry ${end + 2}, conclusion: after the conclusion.`],
  },
  {
    name: 'every prediction locked when all was read',
    attempt: rechained(whole, [...without('prediction'), ...only('prediction'), conclusion]),
    marked: { ...KNOWN, parts: { observation: 10, judgement: 30 } },
    told: [/^entries\[\d+\]: locked after a reading of its test: earns nothing$/],
    against: {},
    onPage: [WRONG_TIME, /prediction in \S+: locked after a reading of its test\./],
  },
  {
    name: 'every figure written before its reading',
    attempt: rechained(whole, [...only('observation'), ...without('observation'), conclusion]),
    marked: { ...KNOWN, parts: { observation: 0, prediction: 15 } },
    told: [/^entries\[0\]: written before its reading: earns nothing$/],
    against: {},
    onPage: [WRONG_TIME, /Entry 1, observation in \S+: written before its reading\./],
  },
  {
    name: 'every judgement before its test',
    attempt: rechained(whole, [...only('judgement'), ...without('judgement'), conclusion]),
    marked: { ...KNOWN, parts: { judgement: 0 } },
    told: [/^entries\[0\]: judged before anything was done in its test: earns nothing$/],
    against: {},
    onPage: [WRONG_TIME, /judged before anything was done in its test/],
  },
  {
    name: 'another name on it, the chain left as it was',
    attempt: { ...whole, trainee: 'somebody else' },
    marked: { ...KNOWN, label: 'somebody else', code: headOf(whole) },
    told: [/^entries\[0\]\.hash: does not follow from the entries before it$/],
    against: {},
    onPage: [DIFFER, /entries\[0\]\.hash/],
  },
  {
    name: 'better figures than it earned',
    attempt: { ...poor, marks: { total: 100, passed: true, parts: { prediction: 20 }, pass: 10 } },
    marked: { ...KNOWN, pass: 70, passed: false },
    told: [
      /^marks\.total: the file says 100, the replay \d/,
      /^marks\.parts\.prediction: the file says 20, the replay \d/,
      /^marks\.pass: the file says 10, the replay 70$/,
      /^marks\.passed: the file says true, the replay false$/,
    ],
    against: { passed: false },
    onPage: [DIFFER, /marks\.passed: the file says true, the replay false/],
  },
];

/** Files that are refused, with what is said. */
export const REFUSED: readonly { readonly name: string; readonly attempt: unknown; readonly said: RegExp }[] =
  [
    {
      name: 'weights that add up to more than a hundred',
      attempt: carrying({ marking: { weights: { prediction: 340 } } }),
      said: /scenario\.marking\.weights/,
    },
    { name: 'no test allowed', attempt: carrying({ allowed: [] }), said: /scenario\.allowed/ },
    {
      name: 'a day that is none',
      attempt: carrying({ clock: '2026-02-30T10:00' }),
      said: /scenario\.clock/,
    },
  ];
