/** The list of test actions keeps the orders of all three kinds of site, and every entry is whole. */
import { describe, expect, test } from 'vitest';
import { papersOf } from '../../src/scenario/scenario.ts';
import { ACTIONS } from '../../src/verification/actions.ts';
import { THREE_PHASE } from '../bench/build.ts';
import { scenarioOn } from '../faults/installations.ts';
import { scenarioOf } from '../scenario/build.ts';

/** Inspection before testing (BS 7671 642), continuity, insulation, polarity before power (643.1); the rest common practice. */
const ORDERS = {
  'home, TN-C-S, tethered':
    'papers instruments isolate prove-dead inspect pe-circuit pe-outlet r1r2-polarity insulation-circuit insulation-unit insulation-outlet poles-open coding make-good ze pfc supply-volts energise state-a state-b state-c c-to-b unplug state-d limit loop residual-half residual-rated residual-five residual-ramp half-wave dc-ramp dc-step residual-again open-pen pilot-short pilot-open diode pe-open recovery supply-return stop finish',
  'commercial, TN-S, socket-outlet, three-phase':
    'papers instruments isolate prove-dead inspect pe-circuit pe-outlet r1r2-polarity insulation-circuit insulation-unit insulation-outlet poles-open make-good ze pfc supply-volts energise state-a coding-sizes hold state-c c-to-b release coding-in-use state-d sharing loop residual-half residual-rated half-wave dc-ramp dc-step residual-again pilot-short pilot-open diode pe-open recovery supply-return stop lost-line finish',
  'home, TT, tethered':
    'papers instruments isolate prove-dead inspect pe-circuit pe-outlet r1r2-polarity insulation-circuit insulation-unit insulation-outlet poles-open coding electrode make-good pfc energise state-a state-b state-c c-to-b unplug state-d limit loop residual-origin residual-half residual-rated residual-five residual-ramp half-wave dc-ramp dc-step residual-again pilot-short pilot-open diode pe-open recovery supply-return stop finish',
} as const;

describe('the list keeps every order', () => {
  const listed = ACTIONS.map(({ id }) => id);
  test.each(Object.entries(ORDERS))('%s', (_, order) => {
    const wanted = order.split(' ').filter((id) => listed.includes(id));
    expect(wanted.length).toBeGreaterThan(25);
    expect(listed.filter((id) => wanted.includes(id))).toEqual(wanted);
  });
});

const PAPERS = [
  scenarioOf({ sheet: { openPen: 'voltage-window', permission: 'authorise' } }),
  scenarioOf({ site: THREE_PHASE, sheet: { outlet: 'socket', ventilation: true, diodeCheck: 'always' } }),
  scenarioOf({
    site: {
      earthing: 'TT',
      electrodeResistance: 80,
      circuit: { residualDevice: { type: 'A', rated: 0.03, delay: 'general', poles: 2 } },
    },
    sheet: { residual: { type: null, rated: null, by: null, direct: 'monitoring' } },
  }),
  scenarioOf({
    site: { circuit: { residualDevice: { type: 'A', rated: 0.1, delay: 'S', poles: 2 } } },
  }),
  scenarioOn('island'),
  scenarioOn('pair'),
].map((scenario) => papersOf(scenario));

describe.each(ACTIONS)('$id', (action) => {
  const papers = PAPERS.filter((p) => action.applies(p));

  test('applies somewhere, and says what should and what should not be', () => {
    expect(papers.length).toBeGreaterThan(0);
    for (const p of papers) {
      const lines = action.expectations(p);
      for (const list of [[...lines, ...action.untold(p)], action.figures(p), action.limits(p)]) {
        const ids = list.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
      }
    }
  });

  test('stops only for what it expects', () => {
    const known = papers.flatMap((p) => [...action.expectations(p), ...action.limits(p)]).map(({ id }) => id);
    expect(action.stops.filter((stop) => !known.includes(stop))).toEqual([]);
  });
});
