/** What test action `lost-line` ought to show. */
import { linesOf } from '../../site/site.ts';
import { ELECTRONICS, OTHER } from '../actions/lostLine.ts';
import {
  between,
  isInside,
  judgeAll,
  outletDead,
  readingsOf,
  samplesWhen,
  showsVoltage,
  type When,
} from '../judging.ts';
import type { Observed, Sample, SetUp } from '../observed.ts';
import { CIRCUIT, pilotStandard, SHEET } from '../sources.ts';
import type { Expectation, Papers, TestLines } from '../testAction.ts';

/** Index of the disturbance that took or gave back a conductor last before this sample, −1 where none did. */
const lastChange = (o: Observed, sample: Sample): number =>
  o.samples
    .slice(0, o.samples.indexOf(sample) + 1)
    .findLastIndex(({ operation }) => operation.op === 'supply' && operation.missing !== undefined);

/** What the supply lacks at this sample: a disturbance stands until the next one. */
function missing(o: Observed, sample: Sample): string | null {
  const operation = o.samples[lastChange(o, sample)]?.operation;
  return operation?.op === 'supply' ? (operation.missing ?? null) : null;
}

const withoutOne =
  (o: Observed, isLost: (line: string | null) => boolean): When =>
  (setUp, sample) =>
    setUp.supply === 'on' && setUp.standIn.plugged && setUp.settled >= 1 && isLost(missing(o, sample));

const without = (o: Observed, line: string): When => withoutOne(o, (lost) => lost === line);
/** Without a line that the electronics do not need, after the unit had been supplying. */
const withoutOther = (o: Observed): When => {
  const when = withoutOne(o, (lost) => lost !== null && lost !== 'N' && lost !== ELECTRONICS);
  return (setUp, sample) =>
    when(setUp, sample) && inC(setUp) && o.samples[lastChange(o, sample) - 1]?.seen.indicator === 'charging';
};

const inC = ({ standIn }: SetUp): boolean =>
  standIn.state === 'C' &&
  standIn.pilot === 'sound' &&
  standIn.diode === 'sound' &&
  standIn.earth === 'sound';

/** What the sheet says that it does without another line. */
const asSheet = (papers: Papers): Expectation =>
  papers.sheet.lostLine === 'stops'
    ? {
        id: 'stops',
        should: true,
        values: { line: ELECTRONICS },
        source: SHEET,
        of: 'unit',
        points: ['supply-wiring', 'switching'],
        judge: (o) => outletDead(papers, o, withoutOther(o)),
      }
    : {
        id: 'goes-on',
        should: true,
        values: { line: ELECTRONICS },
        source: SHEET,
        of: 'unit',
        points: ['supply-wiring', 'switching'],
        judge: (o) => {
          const found = linesOf(papers.site).flatMap((line) =>
            between(
              readingsOf(o, 'voltage', (setUp, s) => withoutOther(o)(setUp, s) && missing(o, s) !== line),
              `outlet.${line}`,
              'outlet.N',
            ),
          );
          return judgeAll(found, showsVoltage);
        },
      };

export const lostLine: TestLines = {
  expectations: (papers) => [
    {
      id: 'lost-line-live',
      should: false,
      values: { lost: OTHER },
      source: CIRCUIT,
      of: 'circuit',
      points: ['supply-wiring'],
      judge: (o) =>
        judgeAll(
          between(readingsOf(o, 'voltage', without(o, OTHER)), `outlet.${OTHER}`, 'outlet.PE'),
          (r) => !showsVoltage(r),
        ),
    },
    asSheet(papers),
    {
      id: 'dark',
      should: true,
      values: { line: ELECTRONICS },
      source: CIRCUIT,
      of: 'unit',
      points: ['switching', 'supply-wiring'],
      judge: (o) =>
        judgeAll(samplesWhen(o, without(o, ELECTRONICS)), ({ seen }) => seen.indicator === 'dark'),
    },
    {
      id: 'pilot-dead',
      should: true,
      values: { line: ELECTRONICS },
      source: pilotStandard('Tables A.4 and A.5'),
      of: 'unit',
      points: ['pilot'],
      judge: (o) =>
        judgeAll(readingsOf(o, 'pilot', without(o, ELECTRONICS)), (r) =>
          isInside(r, { least: -1, greatest: 1 }),
        ),
    },
    {
      id: 'voltage',
      should: false,
      values: { line: ELECTRONICS },
      source: pilotStandard('6.3.1, Table A.6 sequence 12'),
      of: 'unit',
      points: ['switching'],
      judge: (o) => outletDead(papers, o, without(o, ELECTRONICS)),
    },
    {
      id: 'recovers',
      should: true,
      source: SHEET,
      of: 'unit',
      points: ['switching', 'supply-wiring'],
      judge: (o) =>
        judgeAll(
          o.samples
            .filter(
              (s) =>
                s.setUp.supply === 'on' &&
                !s.setUp.standIn.plugged &&
                !s.setUp.disturbed &&
                s.operation.op === 'wait' &&
                o.samples.slice(0, o.samples.indexOf(s)).some(({ setUp }) => setUp.disturbed),
            )
            .slice(-1),
          ({ seen }) => seen.indicator === 'ready',
        ),
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: ['voltage'],
};
