/** Ways in which an attempt's file is changed by whoever handed it in, drawn by a seed; and what must be said of each. */
import type { Attempt, Entry, Noted } from '../../src/attempt/record/attempt.ts';
import { appended } from '../../src/attempt/record/attempt.ts';
import type { Draw } from '../../src/unit/design.ts';

type Json = Record<string, unknown>;

export interface Tampered {
  readonly what: string;
  readonly text: string;
  /** The log is as it was: then the tutor's copy gives the same marks as the honest file. */
  readonly sameLog: boolean;
}

const copyOf = (attempt: Attempt): Json => JSON.parse(JSON.stringify(attempt));

/** The same log under hashes that fit whatever else was changed. */
function rechained(file: Json): Json {
  const { entries, ...rest } = file as unknown as Attempt;
  return entries.reduce<Attempt>(
    (log, { hash: _, at, wall, ...noted }) => appended(log, noted as Noted, at, wall),
    { ...rest, entries: [] },
  ) as unknown as Json;
}

/** Of the scenario that a file carries, each drawn by its own share. */
const DOCTORED: readonly ((scenario: Json, draw: Draw) => void)[] = [
  (scenario) => {
    scenario.faults = [];
  },
  (scenario) => {
    scenario.marking = { pass: 1, weights: { prediction: 100, judgement: 0, diagnosis: 0 } };
  },
  (scenario) => {
    scenario.marking = { setAside: [{ gate: 'insulation-live', reason: 'agreed' }] };
  },
  (scenario, draw) => {
    scenario.seed = Math.floor(1_000_000 * draw('seed'));
  },
  (scenario, draw) => {
    (scenario.site as Json).voltage = 237 + Math.floor(15 * draw('volts'));
  },
  (scenario) => {
    scenario.allowed = ['state-b'];
  },
  (scenario) => {
    scenario.support = 'guided';
  },
  (scenario) => {
    scenario.title = 'Another <b>title</b>';
  },
  (scenario) => {
    scenario.site = null;
  },
  (scenario) => {
    scenario.lines = { 'state-b': ['high'] };
  },
];

export function doctored(attempt: Attempt, draw: Draw): Tampered {
  const file = copyOf(attempt);
  const scenario = file.scenario as Json;
  const at = Math.floor(DOCTORED.length * draw('which'));
  DOCTORED[at]?.(scenario, draw);
  const made = draw('chain') < 0.5 ? rechained(file) : file;
  return { what: `scenario ${at}`, text: JSON.stringify(made), sameLog: true };
}

type Change = (file: Json, entries: Entry[], draw: Draw) => void;

/** Of everything but the scenario; those of the log change it. */
const CHANGES: readonly (readonly [what: string, change: Change, sameLog: boolean])[] = [
  [
    'claims a total',
    (file) => {
      file.marks = { ...(file.marks as Json), total: 100, passed: true };
    },
    true,
  ],
  [
    'claims its gates',
    (file) => {
      file.marks = { gates: { critical: [], verdict: true }, hurdles: [] };
    },
    true,
  ],
  [
    'another label',
    (file) => {
      file.trainee = 'elm-99';
    },
    true,
  ],
  [
    'an easier rung',
    (file) => {
      file.rung = 1;
    },
    true,
  ],
  [
    'of no giving-out',
    (file) => {
      delete file.given;
    },
    true,
  ],
  [
    'of another giving-out',
    (file) => {
      file.given = { id: 'feedbeef00' };
    },
    true,
  ],
  [
    'an older engine',
    (file) => {
      file.engine = '2.0.0';
    },
    true,
  ],
  [
    'a newer format',
    (file) => {
      file.format = 9;
    },
    true,
  ],
  [
    'an entry less',
    (_, entries, draw) => {
      entries.splice(Math.floor(entries.length * draw('at')), 1);
    },
    false,
  ],
  [
    'an entry twice',
    (_, entries, draw) => {
      const at = Math.floor(entries.length * draw('at'));
      entries.splice(at, 0, entries[at] as Entry);
    },
    false,
  ],
  [
    'two entries changed over',
    (_, entries, draw) => {
      const at = Math.floor((entries.length - 1) * draw('at'));
      const [one, other] = [entries[at] as Entry, entries[at + 1] as Entry];
      entries.splice(at, 2, other, one);
    },
    false,
  ],
  [
    'every answer changed',
    (_, entries) => {
      for (const entry of entries)
        if (entry.kind === 'prediction') for (const line of entry.lines) line.answer = 'should';
    },
    false,
  ],
  [
    'a figure changed',
    (_, entries, draw) => {
      const typed = entries.filter((entry) => entry.kind === 'observation');
      const one = typed[Math.floor(typed.length * draw('at'))];
      if (one?.kind === 'observation') one.value = (one.value ?? 0) + 1;
    },
    false,
  ],
  [
    'another verdict',
    (_, entries) => {
      for (const entry of entries) if (entry.kind === 'conclusion') entry.because = 'changed';
    },
    false,
  ],
  [
    'other times',
    (_, entries, draw) => {
      const one = entries[Math.floor(entries.length * draw('at'))];
      if (one !== undefined) one.at += 10;
    },
    false,
  ],
  [
    'a hash changed',
    (_, entries, draw) => {
      const one = entries[Math.floor(entries.length * draw('at'))];
      if (one !== undefined) one.hash = '0'.repeat(64);
    },
    false,
  ],
];

/** `chained`: by somebody who makes the chain again. */
export function tampered(attempt: Attempt, draw: Draw): Tampered & { readonly chained: boolean } {
  const file = copyOf(attempt);
  const entries = file.entries as Entry[];
  const [what, change, sameLog] = CHANGES[Math.floor(CHANGES.length * draw('which'))] as (typeof CHANGES)[0];
  change(file, entries, draw);
  const chained = file.format === 2 && draw('chain') < 0.3;
  const text = JSON.stringify(chained ? rechained(file) : file);
  if (draw('cut') < 0.04)
    return {
      what: 'cut off',
      text: text.slice(0, Math.floor(text.length * draw('end'))),
      sameLog: true,
      chained,
    };
  return { what: `${what}${chained ? ', chain made again' : ''}`, text, sameLog, chained };
}
