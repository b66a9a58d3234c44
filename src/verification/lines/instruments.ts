/** What test action `instruments` ought to show. */
import { KNOWN_RESISTOR } from '../../bench/instruments/directTester.ts';
import type { Reading } from '../../bench/reading.ts';
import { pairOf } from '../../bench/reading.ts';
import type { Range } from '../../laws/quantities.ts';
import { TOGETHER } from '../actions/instruments.ts';
import { between, isInside, judgeAll, readingsOf, samplesWhen } from '../judging.ts';
import { fromMemory, PRACTICE, published } from '../sources.ts';
import type { TestLines } from '../testAction.ts';

/** The known resistor has to read as much, to a tenth (common practice, no source): beyond it the tester goes back to be calibrated. */
const A_TENTH = 0.1;
const KNOWN: Range = { least: (1 - A_TENTH) * KNOWN_RESISTOR, greatest: (1 + A_TENTH) * KNOWN_RESISTOR };

/** Refused for what was met is no look at the leads; refused for the tester's own battery is. */
const onOneTerminal = (reading: Reading): boolean => {
  const { qualifier, reason } = reading;
  const ends = pairOf(reading);
  return (qualifier !== 'unable' || reason?.id === 'battery-low') && ends?.[0] === ends?.[1];
};

export const instruments: TestLines = {
  expectations: () => [
    {
      id: 'nulled',
      should: true,
      source: PRACTICE,
      of: 'tester',
      points: ['tester', 'protective-conductor'],
      judge: (o) =>
        judgeAll(
          between(
            readingsOf(o, 'continuity', ({ leadsNulled }) => leadsNulled),
            TOGETHER,
            TOGETHER,
          ).filter(onOneTerminal),
          (r) => isInside(r, { greatest: 0.005 }),
        ),
    },
    {
      id: 'insulation-joined',
      should: true,
      source: PRACTICE,
      of: 'tester',
      points: ['tester', 'insulation'],
      judge: (o) =>
        judgeAll(
          between(
            readingsOf(o, 'insulation', () => true),
            TOGETHER,
            TOGETHER,
          ).filter(onOneTerminal),
          (r) => isInside(r, { greatest: 0.005e6 }),
        ),
    },
    {
      id: 'known-ohm',
      should: true,
      source: fromMemory('IET Guidance Note 3: accuracy checked against known resistors'),
      of: 'tester',
      points: ['tester', 'protective-conductor', 'insulation'],
      judge: (o) =>
        judgeAll(
          between(
            readingsOf(o, 'continuity', ({ leadsNulled }) => leadsNulled),
            'leads',
            'known-ohm',
          ),
          (r) => isInside(r, KNOWN),
        ),
    },
    {
      id: 'fuse',
      should: false,
      source: published('HSE GS38, 4th edition 2015'),
      of: 'tester',
      points: ['tester', 'supply-wiring'],
      judge: (o) =>
        judgeAll(
          samplesWhen(o, () => true),
          ({ events }) => events.every(({ what }) => what !== 'instrument fuse opened'),
        ),
    },
  ],
  figures: () => [],
  limits: () => [],
  // Whatever is read with it from here on would be the tester's.
  stops: ['nulled', 'insulation-joined', 'known-ohm'],
};
