/** The file of everything: what goes in comes out; a bad frame refuses it all, a bad attempt leaves itself out. */
import { describe, expect, test } from 'vitest';
import { NO_QUESTIONS } from '../../src/store/questionRecord.ts';
import { looksLikeRecord, parseRecord } from '../../src/store/recordFile.ts';
import type { KeptRecord } from '../../src/store/recordText.ts';
import { makeRecordText } from '../../src/store/recordText.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { faultlessAttempt } from '../helpers/trainee.ts';

const { scenario, file } = scenarioNamed('mill-race');
const attempt = faultlessAttempt(scenario, file);
const record: KeptRecord = {
  items: [
    {
      id: 'a-1',
      began: 1_700_000_000_000,
      changed: 1_700_000_100_000,
      handedIn: null,
      putAway: true,
      stands: null,
      isGuest: false,
      attempt,
      draft: { step: 'predicting', fields: { act: 'wa' } },
      further: { room: 7 },
    },
  ],
  unreadable: [],
  goal: { text: 'prove dead at three places', at: 1_700_000_000_000 },
  questions: {
    cards: [
      {
        due: 1_700_000_200_000,
        last: 1_700_000_100_000,
        stability: 2.5,
        difficulty: 5,
        scheduledDays: 3,
        reps: 1,
        lapses: 0,
        state: 2,
        topic: 'offer',
        kind: 'duty-of-current',
        mistake: 'amperes-for-percent',
        asked: 2,
        right: 1,
        sureAndWrong: 1,
        lastWrong: 1_700_000_000_000,
        kinds: {},
      },
    ],
    assessment: 1_800_000_000_000,
    session: {
      address: 'seed=1',
      ids: ['duty-of-current.offer.1'],
      began: 1_700_000_000_000,
      answers: [
        { given: { way: 'figure', value: 32, unit: '%' }, sure: 'would-sign', at: 1_700_000_100_000 },
      ],
      at: 0,
      due: {},
    },
  },
  further: { college: 'of nowhere' },
};
const text = makeRecordText(record);
const changed = (change: (value: ReturnType<typeof JSON.parse>) => void): string => {
  const value = JSON.parse(text);
  change(value);
  return JSON.stringify(value);
};
/** The file with something else in its only attempt. */
const withItem = (part: object): string =>
  changed((value) => {
    Object.assign(value.attempts[0], part);
  });

test('what goes in comes out, with all that is not known here', () => {
  const read = parseRecord(text);
  expect(read).toEqual({ ok: true, value: { record, leftOut: [] } });
  if (read.ok) expect(JSON.parse(makeRecordText(read.value.record))).toEqual(JSON.parse(text));
  expect(looksLikeRecord(JSON.parse(text))).toBe(true);
});

test('questions that make no sense are left out and named, all else comes in', () => {
  const read = parseRecord(
    changed((value) => {
      value.questions.cards[0].topic = 'offr';
    }),
  );
  expect(read.ok && read.value.leftOut.map(({ path }) => path)).toEqual(['questions.cards[0].topic']);
  expect(read.ok && read.value.record).toEqual({ ...record, questions: NO_QUESTIONS });
});

test('half a letter in what was typed does not keep the rest from coming in', () => {
  const [item] = record.items;
  const typed = { fields: { because: 'cut \ud83d' } };
  const halved = {
    ...record,
    items: [{ ...(item as NonNullable<typeof item>), draft: typed }],
    goal: { text: '\udd0c', at: 5 },
  };
  const read = parseRecord(makeRecordText(halved));
  expect(read.ok && read.value.record.goal?.text).toBe('\ufffd');
  expect(read.ok && read.value.record.items[0]?.draft).toEqual({ fields: { because: 'cut \ufffd' } });
});

test('a number without end is refused with its place', () => {
  const read = parseRecord(text.replace(/"at":\d+(\.\d+)?/, '"at":1e999'));
  expect(read.ok || read.problems.map(({ message }) => message).join()).toMatch(/1e999/);
});

describe('the whole file is refused', () => {
  test.each([
    [
      'newer',
      changed((value) => Object.assign(value, { format: 2 })),
      'format',
      /newer version \(format 2\)/,
    ],
    ['no JSON', text.slice(0, -20), '', /not JSON/],
    ['another thing', '{"format":1}', 'attempts', /missing/],
    ['hostile', text.replace('"room"', '"__proto__":{},"room"'), 'attempts[0].__proto__', /not allowed/],
    ['a strange id', withItem({ id: '../x' }), 'attempts[0].id', /letters/],
    ['a strange day', withItem({ began: 1e300 }), 'attempts[0].began', /too large/],
    [
      'a goal too long',
      changed((value) => Object.assign(value.goal, { text: 'x'.repeat(301) })),
      'goal.text',
      /too long/,
    ],
    ['too large', ' '.repeat(50_000_001), '', /larger than 50 MB/],
  ])('%s', (_, bad, path, message) => {
    const read = parseRecord(bad);
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.problems[0]).toEqual({ path, message: expect.stringMatching(message) });
  });
});

test('an attempt that cannot be read is left out and named; the others are taken', () => {
  const read = parseRecord(
    changed((value) => {
      value.attempts.push(structuredClone(value.attempts[0]));
      value.attempts[0].attempt.entries[2].kind = 'guess';
      value.attempts[0].attempt.scenario.site.circuit.length = -1;
    }),
  );
  expect(read.ok).toBe(true);
  if (!read.ok) return;
  expect(read.value.record.items.map(({ attempt: own }) => own)).toEqual([attempt]);
  const paths = read.value.leftOut.map(({ path }) => path);
  expect(paths).toContain('attempts[0].attempt.entries[2].kind');
  expect(paths).toContain('attempts[0].attempt.scenario.site.circuit.length');
});

test('a draft that no person typed is left out', () => {
  const read = parseRecord(withItem({ draft: { x: 'x'.repeat(100_000) } }));
  expect(read.ok && read.value.record.items[0]?.draft).toBeNull();
});
