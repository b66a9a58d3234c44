/** What test action `recovery` ought to show. */
import type { Reading, ReadingOf } from '../../bench/reading.ts';
import { asked, offeredReadings, oscillating } from '../actions/pilotLines.ts';
import { shorted } from '../actions/pilotShort.ts';
import { keptTrip } from '../actions/recovery.ts';
import { afterTrip, atTheOutlet } from '../actions/residual.ts';
import { inState, judgeAll, outletDead, outletSupplied, settledFor, type When } from '../judging.ts';
import type { Observed, Sample } from '../observed.ts';
import { pilotStandard, published, SHEET } from '../sources.ts';
import type { Expectation, Papers, TestLines } from '../testAction.ts';

const wasShorted = (o: Observed, index: number): boolean =>
  o.samples.slice(0, index).some((s) => shorted(s.setUp, s));
const wasTripped = (o: Observed, index: number): boolean =>
  o.samples
    .slice(0, index)
    .some(({ readings }) => readings.some((r) => r.quantity === 'residual' && r.qualifier === null));

/** Nothing plugged in, at the end of it all: whatever there was is cleared. */
const afterAll: When = (setUp, sample) =>
  setUp.supply === 'on' && !setUp.standIn.plugged && sample.operation.op === 'wait';

/** Tripped by the unit itself, with the supply gone and back since, and no reset; and the sheet asks for one. */
const backAfterTrip =
  ({ sheet }: Papers, o: Observed): When =>
  (setUp, sample) => {
    const before = o.samples.slice(0, o.samples.indexOf(sample));
    const tripped = before.findLastIndex(({ readings }) => readings.some(isOwnTrip));
    const since = before.slice(tripped + 1);
    const reading = before[tripped]?.readings.find(isOwnTrip);
    const reason = reading?.waveform === 'sinusoidal' ? 'residual' : 'direct';
    return (
      inState('C')(setUp, sample) &&
      reading !== undefined &&
      sheet.clearsBy[reason] === 'reset' &&
      since.some(supplyReturned) &&
      !since.some(({ operation }) => operation.op === 'reset' && operation.what === 'unit')
    );
  };

/** Which of its devices answers to a half-wave nobody can tell. */
const isOwnTrip = (r: Reading): r is ReadingOf<'residual'> =>
  atTheOutlet(r) &&
  r.qualifier === null &&
  r.trippedWhat === 'unit' &&
  r.waveform?.startsWith('half-wave') === false;

const supplyReturned = ({ operation }: Sample): boolean =>
  operation.op === 'energise' || (operation.op === 'reset' && operation.what === 'supply');

const afterReturn = (papers: Papers): readonly Expectation[] =>
  keptTrip(papers) === null
    ? []
    : [
        {
          id: 'after-return',
          should: false,
          source: published('IEC 61851-1:2017 clause 14, UK note', 'and-sheet'),
          of: 'unit',
          points: ['residual-direct', 'switching'],
          judge: (o) => outletDead(papers, o, backAfterTrip(papers, o)),
        },
      ];

export const recovery: TestLines = {
  expectations: (papers) => [
    {
      id: 'after-short',
      should: true,
      source: SHEET,
      of: 'unit',
      points: ['pilot', 'switching'],
      judge: (o) =>
        judgeAll(
          offeredReadings(
            papers,
            o,
            (setUp, sample) => inState('B')(setUp, sample) && wasShorted(o, o.samples.indexOf(sample)),
          ),
          oscillating,
        ),
    },
    {
      id: 'after-trip',
      should: true,
      source: SHEET,
      of: 'unit',
      points: ['residual-direct', 'switching'],
      judge: (o) =>
        outletSupplied(
          papers,
          o,
          (setUp, sample) =>
            asked(papers, o)(setUp, sample) &&
            wasTripped(o, o.samples.indexOf(sample)) &&
            !afterTrip(o)(setUp, sample) &&
            !backAfterTrip(papers, o)(setUp, sample),
        ),
    },
    {
      id: 'by-itself',
      should: false,
      source: pilotStandard('clause 14, UK note'),
      of: 'unit',
      points: ['residual-direct', 'switching'],
      judge: (o) =>
        outletDead(papers, o, (setUp, sample) => inState('C')(setUp, sample) && afterTrip(o)(setUp, sample)),
    },
    ...afterReturn(papers),
    {
      id: 'ready',
      should: true,
      source: SHEET,
      of: 'unit',
      points: ['pilot', 'residual-direct', 'switching'],
      judge: (o) =>
        judgeAll(
          o.samples
            .filter(
              (s) =>
                settledFor(afterAll, 1)(s.setUp, s) &&
                wasTripped(o, o.samples.indexOf(s)) &&
                wasShorted(o, o.samples.indexOf(s)),
            )
            .slice(-1),
          ({ seen }) => seen.indicator === 'ready',
        ),
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: [],
};
