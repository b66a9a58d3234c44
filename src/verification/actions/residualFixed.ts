/** Expectations and limits that the tests at a fixed a.c. residual current share. */
import type { ReadingOf } from '../../bench/reading.ts';
import type { Amps, Seconds } from '../../laws/quantities.ts';
import { breakTimeLimit, VERIFICATION } from '../../laws/residualLimits.ts';
import { inState, judgeAll, outletDead } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { pilotStandard } from '../sources.ts';
import type { Expectation, Limit, Papers } from '../testAction.ts';
import { afterTrip, atTheOutlet, fixedReadings, mayTrip, testedDevice, tripsInTime } from './residual.ts';

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

const shown = (test: FixedTest, o: Observed): readonly ReadingOf<'residual'>[] =>
  fixedReadings(o, 'sinusoidal', test.amps, test.greatest);

export const inTime = (papers: Papers, test: FixedTest): Expectation => ({
  id: 'in-time',
  should: true,
  values: { ...test },
  source: rulesFor(papers).regulation('643.8; IEC 61008-1, break times'),
  of: testedDevice(papers)?.of ?? 'circuit',
  points: POINTS,
  judge: (o) => tripsInTime(shown(test, o), test),
});

export const whichTrips = (papers: Papers, test: FixedTest): Expectation => {
  const allowed = mayTrip(papers, test.amps);
  const own = papers.sheet.residual.type !== null;
  return {
    id: 'which',
    should: true,
    values: { own, alone: allowed.length === 1 },
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

export const timeLimit = (test: FixedTest, source: Limit['source']): Limit => ({
  id: 'trip-time',
  values: { ...test },
  quantity: 'residual',
  unit: 's',
  limit: test.greatest,
  kind: 'most',
  compares: 'trip time',
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
  timeLimit(fixedTest(papers, 1), rulesFor(papers).regulation('643.8', 'with-iec-61008-1'));
