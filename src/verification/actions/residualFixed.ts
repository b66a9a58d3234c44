/** Expectations and limits that the tests at a fixed a.c. residual current share. */
import type { Reading } from '../../bench/reading.ts';
import type { Amps, Seconds } from '../../laws/quantities.ts';
import { breakTimeLimit, VERIFICATION } from '../../laws/residualLimits.ts';
import { inState, judgeAll, outletDead } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { pilotStandard } from '../sources.ts';
import type { Expectation, Limit, Papers } from '../testAction.ts';
import {
  afterTrip,
  atTheOutlet,
  fixedReadings,
  mayTrip,
  milliamps,
  testedDevice,
  tripsInTime,
} from './residual.ts';

const POINTS: Expectation['points'] = ['residual-direct'];

export interface FixedTest {
  readonly amps: Amps;
  readonly least: Seconds;
  readonly greatest: Seconds;
}

/** The test at this multiple of the rating, with the times that the tested device's kind allows. */
export function fixedTest(papers: Papers, multiple: 1 | 5): FixedTest {
  const device = testedDevice(papers);
  const delay = device?.delay ?? 'general';
  return {
    amps: multiple * (device?.rated ?? 0.03),
    least: multiple === 1 ? VERIFICATION[delay].least : 0,
    greatest: breakTimeLimit(delay, multiple),
  };
}

const shown = (test: FixedTest, o: Observed): readonly Reading[] =>
  fixedReadings(o, 'sinusoidal', test.amps, test.greatest);

export const inTime = (papers: Papers, test: FixedTest): Expectation => {
  const ms = (s: Seconds) => Math.round(1000 * s);
  return {
    id: 'in-time',
    should: true,
    text: `trips within ${ms(test.greatest)} ms at ${milliamps(test.amps)} mA${test.least > 0 ? `, not before ${ms(test.least)} ms` : ''}`,
    why: 'Longer than that the current could do harm.',
    source: rulesFor(papers).regulation('643.8; IEC 61008-1, break times'),
    of: testedDevice(papers)?.of ?? 'circuit',
    points: POINTS,
    judge: (o) => tripsInTime(shown(test, o), test),
  };
};

export const whichTrips = (papers: Papers, test: FixedTest): Expectation => {
  const allowed = mayTrip(papers, test.amps);
  const own = papers.sheet.residual.type !== null;
  return {
    id: 'which',
    should: true,
    text: own
      ? allowed.length === 1
        ? 'opens its own device, and not the one upstream'
        : 'opens its own device, or the one upstream, or both'
      : 'is opened by the device upstream',
    why: own
      ? allowed.length === 1
        ? 'The unit has the device; upstream there is none, or one that stays closed at this current.'
        : 'Two general devices in series may both act: no order is promised.'
      : 'The unit’s sheet leaves the a.c. device to the installation.',
    source: rulesFor(papers).remembered('536.4.1.4'),
    of: 'circuit',
    points: POINTS,
    judge: (o) =>
      judgeAll(
        shown(test, o).filter((r) => r.qualifier === null),
        (r) => r.trippedWhat !== undefined && allowed.includes(r.trippedWhat),
      ),
  };
};

const deadAfter = (papers: Papers, o: Observed) =>
  outletDead(papers, o, (setUp, sample) => inState('C')(setUp, sample) && afterTrip(o)(setUp, sample));

export const staysOff = (papers: Papers): Expectation => ({
  id: 'closes-again',
  should: false,
  text: 'closes again by itself',
  why: 'Nothing may close by itself after a residual trip: somebody has to look first.',
  source: pilotStandard('clause 14, UK note'),
  of: 'unit',
  points: ['residual-direct', 'switching'],
  judge: (o) => deadAfter(papers, o),
});

export const goesDark = (papers: Papers): readonly Expectation[] =>
  papers.sheet.residual.type === null || papers.sheet.residual.by === 'breaker'
    ? [
        {
          id: 'dark',
          should: true,
          text: 'goes dark',
          why: 'What opened lies before its electronics.',
          source: pilotStandard('Table A.5'),
          of: 'circuit',
          points: POINTS,
          judge: (o) =>
            judgeAll(
              o.samples.filter((s) => inState('C')(s.setUp, s) && afterTrip(o)(s.setUp, s)),
              ({ seen }) => seen.indicator === 'dark',
            ),
        },
      ]
    : [];

export const timeLimit = (test: FixedTest, sum: string, source: Limit['source']): Limit => ({
  id: 'trip-time',
  text: `greatest trip time at ${milliamps(test.amps)} mA`,
  quantity: 'residual',
  unit: 's',
  limit: test.greatest,
  kind: 'most',
  compares: 'trip time',
  sum,
  source,
  points: POINTS,
  // Shown up to 5 % above what was set.
  applies: (r) =>
    atTheOutlet(r) &&
    r.waveform === 'sinusoidal' &&
    r.mode === 'fixed' &&
    (r.tripAmps ?? r.limit ?? 0) >= 0.99 * test.amps &&
    (r.tripAmps ?? r.limit ?? 0) <= 1.06 * test.amps,
});

/** The limit of the test at the rating, by the wiring rules. */
export const ratedTimeLimit = (papers: Papers): Limit =>
  timeLimit(
    fixedTest(papers, 1),
    'alternating, 1 × the rating: the time for its kind',
    rulesFor(papers).regulation('643.8, with IEC 61008-1'),
  );
