/**
 * Verified right where a verifier would argue: makes of unit that differ and are sound, supplies that are wrong with the
 * unit right, and units that are not. Verdict and broken lines are written by hand, each with its source.
 */
import { describe, expect, test } from 'vitest';
import { verify } from '../../src/scenario/verify.ts';
import type { UnitSheet } from '../../src/unit/design.ts';
import { SHEET, THREE_PHASE, type Wanted } from '../bench/build.ts';
import { scenarioOf } from './build.ts';

interface Row {
  readonly what: string;
  readonly source: string;
  readonly wanted: Wanted;
  readonly clock?: string;
  readonly verdict: 'sound' | 'not sound';
  readonly broken?: readonly string[];
  readonly stopped?: string;
}

const WINDOW: Partial<UnitSheet> = { openPen: 'voltage-window' };
const SENSING: Partial<UnitSheet> = { openPen: 'earth-sensing' };
const TN_S: NonNullable<Wanted['site']> = { earthing: 'TN-S' };
const YARD: NonNullable<Wanted['site']> = { ...THREE_PHASE, loopImpedance: 0.08, neutralImpedance: 0.08 };
const SOCKET: Partial<UnitSheet> = { outlet: 'socket' };
const BOARD: Wanted = {
  site: {
    ...TN_S,
    circuit: { residualDevice: { type: 'A', rated: 0.03, delay: 'general', poles: 2 } },
  },
  sheet: { residual: { type: null, rated: null, by: null, direct: 'monitoring' } },
};
const fault = (name: string, values = {}) => [{ fault: name, values }];
const bySupply = { clearsBy: { ...SHEET.clearsBy, residual: 'supply', direct: 'supply' } } as const;

const ROWS: readonly Row[] = [
  {
    what: 'a PE pole that stands open without power: the outlet’s PE reads open in the dead tests',
    source: 'derived from BS 7671 722.411.4.1; the sheet says it',
    wanted: { sheet: { ...WINDOW, openPenUnpowered: 'open' } },
    verdict: 'sound',
  },
  {
    what: 'the same with a measure against true earth',
    source: 'derived from BS 7671 722.411.4.1; the sheet says it',
    wanted: { sheet: { ...SENSING, openPenUnpowered: 'open' } },
    verdict: 'sound',
  },
  {
    what: 'a pole that stays closed without power, against a sheet that lets it go',
    source: 'the unit’s sheet',
    wanted: {
      sheet: { ...SENSING, openPenUnpowered: 'open' },
      faults: fault('open-pen-leaves-earth'),
    },
    verdict: 'not sound',
    broken: ['pe-outlet/pole-open', 'open-pen/opens-earth'],
    stopped: 'open-pen',
  },
  {
    what: 'a measure that rides nothing out',
    source: 'BS 7671 722.411.4.1: it need not operate under 4 s; riding out is no duty',
    wanted: { sheet: { ...SENSING, openPenRidesOut: false } },
    verdict: 'sound',
  },
  {
    what: 'a measure that acts after 5.5 s',
    source: 'BS 7671 722.411.4.1: within 5 s',
    wanted: { sheet: SENSING, faults: fault('open-pen-late', { seconds: 5.5 }) },
    verdict: 'not sound',
    // Ten seconds on it is dead: what was late is told by its sound.
    broken: ['open-pen/in-time'],
  },
  {
    what: 'trips that a return of supply clears, as the sheet says',
    source: 'the unit’s sheet; IEC 61851-1 clause 14, UK note, speaks of closing by itself',
    wanted: { site: TN_S, sheet: bySupply },
    verdict: 'sound',
  },
  {
    what: 'a residual trip forgotten with the supply, against a sheet that asks for the button',
    source: 'IEC 61851-1 clause 14, UK note; the unit’s sheet',
    wanted: { site: TN_S, faults: fault('trip-forgotten') },
    verdict: 'not sound',
    broken: ['recovery/after-return'],
  },
  {
    what: 'a d.c. trip forgotten with the supply, the 30 mA device being at the board',
    source: 'IEC 61851-1 clause 14, UK note; the unit’s sheet',
    wanted: { ...BOARD, faults: fault('trip-forgotten') },
    verdict: 'not sound',
    broken: ['recovery/after-return'],
  },
  {
    what: 'authorised before plugging in, where the sheet accepts it',
    source: 'IEC 61851-1 A.3: permission before or after plugging in is the sheet’s',
    wanted: { site: TN_S, sheet: { permission: 'authorise', authoriseBefore: true } },
    verdict: 'sound',
  },
  {
    what: 'default hours with the afternoon peak beginning in the middle of the tests',
    source: 'SI 2021/1467 regs 10 and 11: overridden, it may charge on',
    wanted: { site: TN_S, sheet: { schedule: 'default-hours', startDelay: 600, hoursEnd: 'delayed' } },
    clock: '2026-03-10T15:30',
    verdict: 'sound',
  },
  {
    what: 'a socket-outlet that bears half as much again as the coding for a minute',
    source: 'IEC 61851-1 Annex B names neither margin nor time: the sheet’s',
    wanted: { site: YARD, sheet: { ...SOCKET, overCode: { margin: 0.5, seconds: 60 } } },
    verdict: 'sound',
  },
  {
    what: 'a socket-outlet that never cuts off',
    source: 'IEC 61851-1 Annex B',
    wanted: { site: YARD, sheet: SOCKET, faults: fault('over-code-ignored') },
    verdict: 'not sound',
    broken: ['coding-in-use/over-code'],
  },
  {
    what: '200 V, a measure with a voltage window: its window rightly lets nothing through',
    source: 'ESQCR 2002 reg. 27, at the supply terminals; BS 7671 722.411.4.1 (iv)',
    wanted: { site: { voltage: 200 }, sheet: WINDOW },
    verdict: 'not sound',
    broken: ['supply-volts/line-to-neutral', 'supply-volts/unit-window'],
    stopped: 'supply-volts',
  },
  {
    what: '264 V, the same',
    source: 'ESQCR 2002 reg. 27; BS 7671 722.411.4.1 (iv)',
    wanted: { site: { voltage: 264 }, sheet: WINDOW },
    verdict: 'not sound',
    broken: ['supply-volts/line-to-neutral', 'supply-volts/unit-window'],
    stopped: 'supply-volts',
  },
  {
    what: '200 V, a unit that works on it: the supply alone is outside',
    source: 'ESQCR 2002 reg. 27, at the supply terminals only',
    wanted: { site: { ...TN_S, voltage: 200 } },
    verdict: 'not sound',
    broken: ['supply-volts/line-to-neutral'],
  },
  {
    what: '211 V on three lines: outside at the origin, and within the 5 % that the circuit might lose at the outlet',
    source: 'ESQCR 2002 reg. 27 at the supply terminals; BS 7671 525 and Appendix 4 at the outlet',
    wanted: { site: { ...YARD, voltage: 211 }, sheet: SOCKET },
    verdict: 'not sound',
    broken: ['supply-volts/line-to-neutral', 'supply-volts/line-to-line'],
  },
  {
    what: 'an offer that is always too low is not the one that is due, in B after C either',
    source: 'IEC 61851-1 A.3 and Table A.7',
    wanted: { site: TN_S, faults: fault('offer-too-low', { share: 0.1 }) },
    verdict: 'not sound',
    broken: ['c-to-b/same-offer', 'limit/follows', 'limit/digital'],
  },
  {
    what: 'supply that comes 8 s late is no unit without supply',
    source: 'IEC 61851-1 Table A.6 sequence 4: 3 s',
    wanted: { site: TN_S, faults: fault('closes-slowly', { seconds: 8 }) },
    verdict: 'not sound',
    broken: ['state-c/supplies'],
  },
  {
    what: 'a unit that never notices the request: what needs supply is left',
    source: 'IEC 61851-1 Table A.6 sequence 4; BS 7671 643.1: what cannot be tested is not tested',
    wanted: { site: TN_S, faults: fault('misses-request', { volts: 5.2 }) },
    verdict: 'not sound',
    broken: ['state-c/supplies', 'state-c/charging'],
    stopped: 'state-c',
  },
  {
    what: 'a line pole that never closes, on one phase: the unit says that it charges, and its outlet is dead',
    source: 'IEC 61851-1 Table A.6 sequence 4',
    wanted: { site: TN_S, faults: fault('line-pole-stuck-open', { line: 1 }) },
    verdict: 'not sound',
    broken: ['state-c/supplies'],
    stopped: 'state-c',
  },
];

const verified = ({ wanted, clock }: Row) => {
  const scenario = scenarioOf(wanted);
  return verify(clock === undefined ? scenario : { ...scenario, clock });
};

describe('verified right', () => {
  test.each(ROWS)('$what ($source)', (row) => {
    const { conclusion, stopped, actions } = verified(row);
    const broken = actions.flatMap(({ action, expectations }) =>
      expectations
        .filter(({ finding }) => finding === 'broken')
        .map(({ expectation }) => `${action.id}/${expectation.id}`),
    );
    expect({ conclusion, broken, stopped: stopped?.action }).toEqual({
      conclusion: row.verdict,
      broken: row.broken ?? [],
      stopped: row.stopped,
    });
    expect(actions.flatMap(({ unsafe }) => unsafe)).toEqual([]);
  });
});

describe('a unit without supply', () => {
  const { actions } = verified(ROWS.find(({ what }) => what.startsWith('a unit that never notices')) as Row);
  const done = actions.map(({ action }) => action.id);

  test('ends the tests that need it, and no others', () => {
    for (const { action } of actions.slice(done.indexOf('state-c') + 1))
      expect(action.needsSupply).toBeUndefined();
    expect(done).toEqual(expect.arrayContaining(['state-b', 'state-c', 'state-d', 'limit', 'finish']));
    expect(done).not.toContain('loop');
    // A refusal shows nothing at a unit that never supplies.
    expect(done).not.toContain('diode');
  });

  test('is found after a reset and a second try of 10 s', () => {
    const run = actions.find(({ action }) => action.id === 'state-c')?.run;
    const operations = run?.samples.map(({ operation }) => operation) ?? [];
    const reset = operations.findIndex(({ op }) => op === 'reset');
    expect(operations[reset]).toMatchObject({ op: 'reset', what: 'unit' });
    expect(operations.slice(reset)).toContainEqual({ op: 'wait', seconds: 10 });
  });
});
