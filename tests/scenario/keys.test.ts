/**
 * Every scenario against its key: what a verification must come to, written by hand from the scenario's sheet with
 * the pencil sums beside it (tests/keys). And how much work the bench has with it, counted.
 */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { AnyReading, Reading } from '../../src/bench/reading.ts';
import { pairOf } from '../../src/bench/reading.ts';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { verify, verifying } from '../../src/scenario/verify.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';

interface Figure {
  readonly action: string;
  readonly quantity: Reading['quantity'];
  /** Terminals of the reading; without them every reading of the quantity counts. */
  readonly between?: readonly string[];
  readonly field?: 'value' | 'amps' | 'high';
  readonly about: number;
  readonly within: number;
}

interface Key {
  readonly notes: readonly string[];
  readonly conclusion: string;
  readonly stopped: string | null;
  readonly broken: readonly { action: string; expectation: string; families: readonly string[] }[];
  readonly failed: readonly { action: string; quantity: string; limit: number }[];
  readonly readings: readonly Figure[];
}

const keyOf = (id: string): Key =>
  JSON.parse(readFileSync(join(import.meta.dirname, `../keys/${id}.json`), 'utf8'));

describe.each(scenarioIds)('%s', (id) => {
  const key = keyOf(id);
  const verification = verify(scenarioNamed(id).scenario);
  const { actions } = verification;

  test(`comes to "${key.conclusion}", stopped at ${key.stopped ?? 'nothing'}`, () => {
    expect(verification.conclusion).toBe(key.conclusion);
    expect(verification.stopped?.action ?? null).toBe(key.stopped);
    expect(actions.flatMap(({ unsafe }) => unsafe)).toEqual([]);
  });

  test('breaks what the key says, with its families', () => {
    const broken = actions.flatMap(({ action, expectations }) =>
      expectations
        .filter(({ finding }) => finding === 'broken')
        .map(({ expectation }) => ({
          action: action.id,
          expectation: expectation.id,
          families: expectation.points,
        })),
    );
    expect(broken).toEqual(key.broken);
  });

  test('fails the limits that the key says', () => {
    const failed = actions.flatMap(({ action, limits }) =>
      limits
        .filter(({ pass }) => !pass)
        .map(({ limit }) => ({ action: action.id, quantity: limit.quantity, limit: limit.limit })),
    );
    expect(failed).toEqual(key.failed.map((one) => ({ ...one, limit: expect.closeTo(one.limit, 3) })));
  });

  test.each(key.readings)('$action reads $quantity about $about', (figure) => {
    const { action, quantity, between, field = 'value', about, within } = figure;
    const found = actions
      .filter((done) => done.action.id === action)
      .flatMap(({ run }) => run.samples.flatMap(({ readings }) => readings))
      .filter((r) => r.quantity === quantity)
      .filter((r) => between === undefined || between.every((terminal) => pairOf(r)?.includes(terminal)))
      // An outlet looked at before it is supplied, or a test that was refused, is not what the figure is about.
      .filter((r) => r.qualifier !== 'unable');
    expect(found.length).toBeGreaterThan(0);
    for (const reading of found as readonly AnyReading[])
      expect(Math.abs((reading[field] ?? Number.NaN) - about)).toBeLessThanOrEqual(within);
  });
});

test('the work of a sound single-phase verification: at most 8 solves and 9 chart events an action in the mean', () => {
  const { actions, world } = toItsEnd(verifying(scenarioNamed('harbour-mews').scenario));
  expect(actions.length).toBeGreaterThan(40);
  const { solves, chartEvents } = world.counts;
  console.log(`harbour-mews: ${solves} solves, ${chartEvents} chart events, ${actions.length} actions`);
  expect(solves / actions.length).toBeLessThanOrEqual(8);
  expect(chartEvents / actions.length).toBeLessThanOrEqual(9);
});
