/** Isolation: scripts right and wrong, each with its expected acts, the published source beside it. */
import { describe, expect, test } from 'vitest';
import { operation } from '../../src/bench/operation.ts';
import { perform } from '../../src/bench/perform.ts';
import type { UnsafeAct } from '../../src/bench/unsafe.ts';
import type { World } from '../../src/bench/world.ts';
import type { Breaker } from '../../src/site/site.ts';
import { actionNamed } from '../../src/verification/actions.ts';
import { carryOut } from '../../src/verification/procedure.ts';
import { ISOLATION_SCRIPTS, type IsolationScript, type Step } from '../references/isolationScripts.ts';
import { benchWith, SHEET, siteOf, type Wanted } from './build.ts';

const SINGLE_POLE: Breaker = { type: 'B', rating: 40, breakingCapacity: 6000, poles: 1 };
const PLACES: Readonly<Record<IsolationScript['at'], Wanted>> = {
  home: { sheet: { surgeArrester: true } },
  cottage: {
    site: {
      earthing: 'TT',
      electrodeResistance: 80,
      circuit: { breaker: SINGLE_POLE },
    },
  },
  shop: { site: { earthing: 'TN-S', circuit: { breaker: SINGLE_POLE } } },
};
const FAULTS = { 'pe-not-landed': {}, 'pe-joint': { ohms: 1.8 }, 'detector-lead-parts': {} };

function actsIn(world: World, { at }: IsolationScript, step: Step): readonly UnsafeAct[] {
  if (step.op !== 'action') return perform(world, operation(step)).unsafe;
  const action = actionNamed(step.id);
  if (action === undefined) throw new Error(`no test action "${step.id}"`);
  const papers = { site: siteOf(PLACES[at].site), sheet: { ...SHEET, ...PLACES[at].sheet } };
  return carryOut(world, action, papers).outcomes.flatMap(({ unsafe }) => unsafe);
}

describe.each(ISOLATION_SCRIPTS.map((row) => [`${row.at}: ${row.what}`, row] as const))('%s', (_, row) => {
  test(`${row.expected.length === 0 ? 'is right' : row.expected.map(({ id }) => id).join(', ')} (${row.source})`, () => {
    const { at, fault, script, expected } = row;
    const faults = fault === undefined ? [] : [{ fault, values: FAULTS[fault] }];
    const world = benchWith({ ...PLACES[at], faults });
    const acts = script.flatMap((step) => actsIn(world, row, step));
    expect(acts.map(({ id, critical }) => ({ id, critical }))).toEqual(expected);
  });
});

test('sixty scripts and more, a quarter of them right', () => {
  const right = ISOLATION_SCRIPTS.filter(({ expected }) => expected.length === 0);
  expect(ISOLATION_SCRIPTS.length).toBeGreaterThanOrEqual(60);
  expect(4 * right.length).toBeGreaterThanOrEqual(ISOLATION_SCRIPTS.length);
  expect(new Set(ISOLATION_SCRIPTS.map(({ at, what }) => `${at} ${what}`)).size).toBe(
    ISOLATION_SCRIPTS.length,
  );
});
