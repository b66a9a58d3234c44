/** What the tests with power find when one thing about a unit is not as it should be, and only then. */
import { describe, expect, test } from 'vitest';
import type { FaultChoice } from '../../src/faults/catalogue.ts';
import { actionNamed } from '../../src/verification/actions.ts';
import { judgeExpectations, judgeLimits } from '../../src/verification/assess.ts';
import { carryOut } from '../../src/verification/procedure.ts';
import type { Papers } from '../../src/verification/testAction.ts';
import { benchWith, designOf, SHEET, siteOf, THREE_PHASE, type Wanted } from '../bench/build.ts';

const WINDOW: Wanted = { sheet: { openPen: 'voltage-window' } };
const SOCKET: Wanted = { sheet: { outlet: 'socket' } };

const papersFor = (wanted: Wanted): Papers => ({
  site: siteOf(wanted.site),
  sheet: { ...SHEET, ...wanted.sheet },
});

function findings(id: string, wanted: Wanted) {
  const action = actionNamed(id);
  if (action === undefined) throw new Error(`no test action "${id}"`);
  const papers = papersFor(wanted);
  expect(action.applies(papers)).toBe(true);
  const run = carryOut(benchWith(wanted), action, papers);
  return {
    broken: judgeExpectations(action, papers, run)
      .filter(({ finding }) => finding === 'broken')
      .map(({ expectation }) => expectation.id),
    failed: judgeLimits(action, papers, run)
      .filter(({ pass }) => !pass)
      .map(({ limit }) => limit.id),
  };
}

const design = designOf();
const slow = { timing: { ...design.timing, opening: 0.3 } };

const ROWS: readonly {
  readonly action: string;
  readonly on?: Wanted;
  readonly change: NonNullable<Wanted['design']>;
  readonly what: string;
  readonly broken: readonly string[];
}[] = [
  { action: 'unplug', what: 'slow contactor', change: slow, broken: ['off-in-time'] },
  { action: 'pilot-open', what: 'slow contactor', change: slow, broken: ['off-in-time'] },
  { action: 'pe-open', what: 'slow contactor', change: slow, broken: ['off-in-time'] },
  {
    action: 'limit',
    what: 'a limit followed after a minute',
    change: { timing: { ...design.timing, limit: 60 } },
    broken: ['too-much', 'follows', 'under-six'],
  },
  {
    action: 'residual-half',
    what: 'pick-up at 40 %',
    change: { residualPickup: 0.012 },
    broken: ['trips', 'stays-live'],
  },
  { action: 'residual-rated', what: 'no answer', change: { residualPickup: Infinity }, broken: ['in-time'] },
  { action: 'residual-five', what: 'no answer', change: { residualPickup: Infinity }, broken: ['in-time'] },
  {
    action: 'residual-again',
    what: 'no answer',
    change: { residualPickup: Infinity },
    broken: ['in-time', 'blinded', 'button'],
  },
  {
    action: 'half-wave',
    what: 'no answer, nor a d.c. detector',
    on: { sheet: { residual: { type: 'A', rated: 0.03, by: 'contactor', direct: null } } },
    change: { residualPickup: Infinity },
    broken: ['answers-positive', 'answers-negative'],
  },
  { action: 'dc-step', what: 'a dead detector', change: { directPickup: Infinity }, broken: ['in-time'] },
  {
    action: 'dc-step',
    what: 'a dead type B device',
    on: { sheet: { residual: { type: 'B', rated: 0.03, by: 'breaker', direct: null } } },
    change: { residualPickup: Infinity },
    broken: ['in-time'],
  },
  {
    action: 'open-pen',
    what: 'a measure that senses nothing',
    on: WINDOW,
    change: { openPen: { senses: false, opensEarth: true } },
    broken: ['opens', 'in-time', 'opens-earth', 'onto-hazard'],
  },
  {
    action: 'open-pen',
    what: 'PE left closed',
    on: WINDOW,
    change: { openPen: { senses: true, opensEarth: false } },
    broken: ['opens-earth'],
  },
  {
    action: 'open-pen',
    what: 'PE left closed, sensing true earth',
    on: { sheet: { openPen: 'earth-sensing' } },
    change: { openPen: { senses: true, opensEarth: false } },
    broken: ['opens-earth'],
  },
  {
    action: 'open-pen',
    what: 'late',
    on: WINDOW,
    change: { timing: { ...design.timing, openPen: 8 } },
    broken: ['in-time'],
  },
  {
    action: 'open-pen',
    what: 'no patience',
    on: WINDOW,
    change: { timing: { ...design.timing, openPen: 0.5 } },
    broken: ['rides-out'],
  },
  {
    action: 'diode-in-c',
    what: 'the low half never looked at',
    change: { diodeRule: 'ignored' },
    broken: ['supplies-again'],
  },
  {
    action: 'diode-in-c',
    what: 'the low half never looked at, though the sheet says always',
    on: { sheet: { diodeCheck: 'always' } },
    change: { diodeRule: 'ignored' },
    broken: ['opens', 'supplies-again'],
  },
  {
    action: 'stop',
    what: 'opens at once under load',
    change: { timing: { ...design.timing, stop: 0.05 } },
    broken: ['under-load'],
  },
  {
    action: 'supply-return',
    what: 'every pole welded, and nobody looks',
    change: {
      weldCheck: 'none',
      poles: { L1: { welded: true }, L2: { welded: true }, L3: { welded: true }, N: { welded: true } },
    },
    broken: ['voltage'],
  },
  {
    action: 'unplug',
    what: 'the line’s pole welded, and nobody looks',
    change: {
      weldCheck: 'none',
      poles: { ...design.poles, L1: { welded: true } },
    },
    broken: ['off-in-time', 'voltage'],
  },
  {
    action: 'stop',
    what: 'no pause before a new offer',
    change: { timing: { ...design.timing, pause: 0.2 } },
    broken: ['pause'],
  },
  {
    action: 'lost-line',
    what: 'a line’s pole welded, and nobody looks',
    on: { site: THREE_PHASE },
    change: { weldCheck: 'none', poles: { ...design.poles, L3: { welded: true } } },
    broken: ['stops', 'voltage'],
  },
  {
    action: 'lost-line',
    what: 'goes on, though the sheet says that it stops',
    on: { site: THREE_PHASE },
    change: { watchedLines: 'own' },
    broken: ['stops'],
  },
  {
    action: 'lost-line',
    what: 'a line’s pole stuck open, though the sheet says that it goes on',
    on: { site: THREE_PHASE, sheet: { lostLine: 'goes-on' } },
    change: { poles: { ...design.poles, L3: { welded: false, stuckOpen: true } } },
    broken: ['goes-on'],
  },
];

describe('finds', () => {
  test.each(ROWS)('$what: $action', ({ action, on = {}, change, broken }) => {
    const sound = findings(action, on);
    expect(sound).toEqual({ broken: [], failed: [] });
    const found = findings(action, { ...on, design: change });
    expect(found.broken).toEqual(expect.arrayContaining([...broken]));
  });
});

/** The same, with something wrong in the installation. */
const DELAYED: Wanted = {
  site: { circuit: { residualDevice: { type: 'A', rated: 0.1, delay: 'S', poles: 2 } } },
};
const SENSOR: Wanted = { sheet: { serviceLimit: 60 } };
const PAIR: Wanted = {
  site: { nextPoint: { ratedCurrent: 32, draws: 0 } },
  sheet: { serviceLimit: 60 },
};
const FAULTY: readonly {
  readonly action: string;
  readonly on?: Wanted;
  readonly fault: FaultChoice;
  readonly broken: readonly string[];
}[] = [
  {
    action: 'volt-drop',
    fault: { fault: 'contact-resistance', values: { line: 1, ohms: 0.8 } },
    broken: ['more-than-sum'],
  },
  {
    action: 'volt-drop',
    fault: { fault: 'neutral-joint', values: { ohms: 0.6 } },
    broken: ['more-than-sum'],
  },
  {
    // On three phases it is in one line of three, and the neutral then carries something, too.
    action: 'volt-drop',
    on: { site: THREE_PHASE },
    fault: { fault: 'contact-resistance', values: { line: 3, ohms: 0.8 } },
    broken: ['more-than-sum'],
  },
  {
    action: 'residual-origin',
    on: DELAYED,
    fault: { fault: 'upstream-dead', values: {} },
    broken: ['in-time'],
  },
  {
    action: 'state-c',
    on: { site: THREE_PHASE },
    fault: { fault: 'lines-crossed', values: {} },
    broken: ['rotation'],
  },
  { action: 'supply-volts', fault: { fault: 'pen-open', values: { ohms: 20 } }, broken: ['swings'] },
  { action: 'supply-volts', fault: { fault: 'supply-loop-high', values: { ohms: 1.2 } }, broken: ['swings'] },
  {
    action: 'limit',
    on: SENSOR,
    fault: { fault: 'service-sensor-reversed', values: {} },
    broken: ['too-much', 'under-six'],
  },
  {
    action: 'limit',
    on: SENSOR,
    fault: { fault: 'service-sensor-misplaced', values: {} },
    broken: ['too-much', 'under-six'],
  },
  {
    action: 'next-point',
    on: PAIR,
    fault: { fault: 'service-sensor-past-parting', values: {} },
    broken: ['over-service'],
  },
  {
    action: 'next-point',
    on: PAIR,
    fault: { fault: 'service-limit-set-high', values: { amps: 10 } },
    broken: ['over-service'],
  },
  { action: 'open-pen', on: WINDOW, fault: { fault: 'open-pen-blind', values: {} }, broken: ['says-so'] },
];

describe('finds in an installation', () => {
  test.each(FAULTY)('$fault.fault: $action', ({ action, on = {}, fault, broken }) => {
    expect(findings(action, on)).toEqual({ broken: [], failed: [] });
    expect(findings(action, { ...on, faults: [fault] }).broken).toEqual(expect.arrayContaining([...broken]));
  });

  test('a residual device at the origin is hidden at the outlet by the unit’s own', () => {
    const dead: Wanted = { ...DELAYED, faults: [{ fault: 'upstream-dead', values: {} }] };
    for (const action of ['residual-half', 'residual-rated', 'residual-five', 'residual-ramp'])
      expect(findings(action, dead).broken, action).toEqual([]);
    expect(findings('residual-origin', dead).failed).toEqual(['trip-time']);
  });
});

/** Bad in the opening or trip time: the limit says so, not only the line. */
test.each([
  { action: 'unplug', change: slow, limit: 'opening' },
  { action: 'pe-open', change: slow, limit: 'opening' },
  { action: 'residual-rated', change: { residualPickup: Infinity }, limit: 'trip-time' },
  { action: 'dc-step', change: { directPickup: Infinity }, limit: 'trip-time' },
])('$action: the limit $limit fails too', ({ action, change, limit }) => {
  expect(findings(action, { design: change }).failed).toContain(limit);
});

describe('a socket-outlet', () => {
  test.each(['coding-sizes', 'coding-in-use', 'hold', 'release', 'unplug'])(
    '%s breaks nothing on a sound one',
    (action) => {
      expect(findings(action, SOCKET)).toEqual({ broken: [], failed: [] });
    },
  );

  test('a lock that is not there lets the plug out, before and after', () => {
    // The plug never reports home: such a unit must not supply, so nothing live is let out.
    const lost = findings('hold', { ...SOCKET, design: { timing: { ...design.timing, lock: 1e6 } } });
    expect(lost.broken).toContain('held-in-b');
    expect(lost.broken).not.toContain('let-out-live');
  });
});

describe('waiting', () => {
  test.each([
    { name: 'authorise', sheet: { permission: 'authorise' } },
    { name: 'default hours', sheet: { schedule: 'default-hours' } },
    { name: 'delay', sheet: { startDelay: 600 } },
    { name: 'held', sheet: { permission: 'held' } },
  ] as const)('$name is no fault', ({ sheet }) => {
    expect(findings('sharing', { sheet })).toEqual({ broken: [], failed: [] });
  });
});

test('state D: refused without ventilation, supplied with it', () => {
  const shown = (ventilation: boolean) => {
    const wanted: Wanted = { sheet: { ventilation } };
    const papers = papersFor(wanted);
    const action = actionNamed('state-d');
    if (action === undefined) throw new Error('no state-d');
    const run = carryOut(benchWith(wanted), action, papers);
    return judgeExpectations(action, papers, run).map(({ finding }) => finding);
  };
  expect(shown(false)).toEqual(['met', 'met']);
  expect(shown(true)).toEqual(['met', 'met']);
});
