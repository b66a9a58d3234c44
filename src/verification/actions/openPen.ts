/** Test action `open-pen`: the open-PEN measure, by the disturbance that it watches for. */
import type { OperationInput } from '../../bench/operation.ts';
import type { Reading } from '../../bench/reading.ts';
import type { Seconds, Volts } from '../../laws/quantities.ts';
import { OPEN_PEN_TIME, OPEN_PEN_WINDOW, TOUCH_LIMIT } from '../../laws/supplyLimits.ts';
import type { Load } from '../../site/site.ts';
import { linesOf } from '../../site/site.ts';
import {
  between,
  inState,
  judgeAll,
  outletDead,
  outletSupplied,
  readingsOf,
  samplesWhen,
  showsVoltage,
  type When,
} from '../judging.ts';
import type { Observed, Sample } from '../observed.ts';
import { cleared, unplug, untilSupplied } from '../offer.ts';
import { CIRCUIT, fromMemory, published, wiringRules } from '../sources.ts';
import { outletVoltages, voltage, waitFor } from '../steps.ts';
import type { Expectation, Papers, TestAction } from '../testAction.ts';

/** Shorter than the 4 s that a measure may ignore, s. */
const SHORT: Seconds = 3;
const HELD: Seconds = 10;
/** Under the window’s lower edge, and enough for any unit to work from, V. */
const LOW = OPEN_PEN_WINDOW.least - 5;

/**
 * With PE parted the filters hold the case about half-way between line and neutral, behind a high resistance; a meter
 * of 10 MΩ shows that and takes no harm. Connected to the earthing terminal it has none.
 */
const metToCase: OperationInput = {
  op: 'measure',
  quantity: 'voltage',
  between: ['met', 'case'],
  tool: 'meter',
};
/** Between none and half-way, V. */
const PARTED: Volts = 30;

const metered = (readings: readonly Reading[]): readonly Reading[] =>
  between(readings, 'met', 'case').filter(({ tool }) => tool === 'meter');

const byWindow = ({ sheet }: Papers): boolean => sheet.openPen === 'voltage-window';

/**
 * Neighbours whose current, with the PEN open, moves the neutral at right angles to L1: line to neutral stays inside
 * the window while the earthing terminal goes over 70 V. A street's worth, so that an electrode does not hold it down.
 */
const SIDEWAYS: readonly Load[] = [
  { line: 'L1', power: 60_000 },
  { line: 'L2', power: 84_000 },
];

const disturb = (papers: Papers): OperationInput =>
  byWindow(papers)
    ? { op: 'supply', voltage: LOW }
    : { op: 'supply', pen: 'open', neighbours: [...SIDEWAYS] };
const restore = ({ site }: Papers): OperationInput => ({
  op: 'supply',
  pen: 'sound',
  voltage: site.voltage,
  neighbours: [...site.neighbours],
});

const disturbed: When = ({ supply, disturbed: is, standIn }) => supply === 'on' && is && standIn.plugged;

/** How long the disturbance had lasted when this was observed, s; null where it was not seen to begin. */
function lasted(o: Observed, sample: Sample, at: Seconds): Seconds | null {
  const before = o.samples.slice(0, o.samples.indexOf(sample) + 1);
  const first = before.length - 1 - [...before].reverse().findIndex(({ setUp }) => !setUp.disturbed);
  // The operation that brought it about passes no time itself.
  const began = before[first + 1];
  return began === undefined || began.operation.op !== 'supply' ? null : at - began.seen.at;
}

const longEnough =
  (o: Observed, least: Seconds): When =>
  (setUp, sample) => {
    const at = sample.readings[0]?.at ?? sample.seen.at;
    const time = disturbed(setUp, sample) ? lasted(o, sample, at) : null;
    return time !== null && time >= least;
  };

/** The disturbances seen from beginning to end, by how long they lasted. */
const ended = (o: Observed) =>
  o.samples.flatMap((sample, i) => {
    const before = o.samples[i - 1];
    if (before === undefined || sample.setUp.disturbed || !before.setUp.disturbed) return [];
    const time = lasted(o, before, sample.seen.at);
    return time === null ? [] : [{ time, index: i }];
  });

/** Samples after a short disturbance and before the next one or a reset. */
const afterShort =
  (o: Observed): When =>
  (setUp, sample) => {
    const index = o.samples.indexOf(sample);
    const last = ended(o).findLast(({ index: end }) => end <= index);
    const since = last === undefined ? [] : o.samples.slice(last.index, index + 1);
    return (
      inState('C')(setUp, sample) &&
      last !== undefined &&
      last.time < 4 &&
      !o.samples.slice(0, last.index).some((s) => longEnough(o, 4)(s.setUp, s)) &&
      !since.some(({ operation }) => operation.op === 'reset')
    );
  };

const parallelEarth = ({ site }: Papers) => site.circuit.parallelEarth;

/** The PE pole, once it has opened: no way from the earthing terminal to the unit, or no voltage of it on the unit. */
const opensEarth = (papers: Papers): readonly Expectation[] =>
  parallelEarth(papers) !== null
    ? []
    : [
        {
          id: 'opens-earth',
          should: true,
          text: 'opens the protective conductor as well',
          why: 'The vehicle’s body stands on that conductor: it must not stay on a broken earth.',
          source: wiringRules('722.411.4.1'),
          of: 'unit',
          points: ['supply-wiring', 'protective-conductor'],
          judge: (o) => {
            const long = longEnough(o, OPEN_PEN_TIME);
            return byWindow(papers)
              ? judgeAll(metered(readingsOf(o, 'voltage', long)), (r) => (r.value ?? 0) > PARTED)
              : judgeAll(
                  between(readingsOf(o, 'voltage', long), 'case', 'earth'),
                  (r) => (r.value ?? 0) - (r.uncertainty ?? 0) <= TOUCH_LIMIT,
                );
          },
        },
      ];

export const openPen: TestAction = {
  id: 'open-pen',
  title: 'Open-PEN measure',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  purpose: 'Show that the unit parts the vehicle from a broken PEN conductor, PE and all, and stays parted.',
  applies: ({ site, sheet }) => sheet.openPen !== 'none' && site.earthing === 'TN-C-S',
  steps: (papers) => [
    ...untilSupplied(papers),
    disturb(papers),
    waitFor(SHORT),
    restore(papers),
    waitFor(6),
    ...linesOf(papers.site).map((x) => voltage(`outlet.${x}`, 'outlet.N')),
    disturb(papers),
    waitFor(HELD),
    ...outletVoltages(papers),
    byWindow(papers) ? metToCase : voltage('case', 'earth'),
    { op: 'reset', what: 'unit' },
    waitFor(3),
    ...linesOf(papers.site).map((x) => voltage(`outlet.${x}`, 'outlet.N')),
    restore(papers),
    ...unplug,
    ...cleared(papers, 'openPen'),
    metToCase,
  ],
  expectations: (papers) => [
    {
      id: 'rides-out',
      should: true,
      text: 'is back to supplying, without a reset, after a disturbance of 3 s',
      why: 'It may ignore what is over within 4 s; a lock-out for every dip would be a nuisance.',
      source: fromMemory('BS 7671:2018+A2:2022 722.411.4.1'),
      of: 'unit',
      points: ['supply-wiring', 'switching'],
      judge: (o) => outletSupplied(papers, o, afterShort(o)),
    },
    {
      id: 'opens',
      should: true,
      text: 'is dead at the outlet 5 s after the disturbance began',
      why: byWindow(papers)
        ? 'Line to neutral outside 207 to 253 V may mean that the PEN conductor is open.'
        : 'The earthing terminal stands at more than 70 V to true earth.',
      source: wiringRules('722.411.4.1'),
      of: 'unit',
      points: ['supply-wiring', 'switching'],
      judge: (o) => outletDead(papers, o, longEnough(o, OPEN_PEN_TIME)),
    },
    {
      id: 'in-time',
      should: true,
      text: 'opens within 5 s',
      why: 'The contactor can be heard.',
      source: wiringRules('722.411.4.1'),
      of: 'unit',
      points: ['supply-wiring', 'switching'],
      judge: (o) =>
        judgeAll(
          ended(o).filter(({ time }) => time >= OPEN_PEN_TIME),
          ({ index, time }) => {
            const held = o.samples.slice(0, index).filter((s) => disturbed(s.setUp, s));
            const end = o.samples[index]?.seen.at ?? 0;
            const opened = held
              .flatMap(({ events }) => events)
              .findLast(({ what, at }) => what === 'contactor opened' && at >= end - time);
            return opened !== undefined && opened.at - (end - time) <= OPEN_PEN_TIME;
          },
        ),
    },
    ...opensEarth(papers),
    {
      id: 'onto-hazard',
      should: false,
      text: 'closes again while the disturbance lasts, reset or not',
      why: 'Nothing may close onto the hazard.',
      source: wiringRules('722.411.4.1'),
      of: 'unit',
      points: ['supply-wiring', 'switching'],
      judge: (o) => {
        const pressed = o.samples.findIndex(
          ({ operation, setUp }) => operation.op === 'reset' && setUp.disturbed,
        );
        if (pressed < 0) return 'not shown';
        const after = samplesWhen(o, longEnough(o, OPEN_PEN_TIME)).filter(
          (s) => o.samples.indexOf(s) > pressed,
        );
        return judgeAll(
          after.flatMap(({ readings }) => readings.filter((r) => r.quantity === 'voltage')),
          (r) => r.between?.[0].startsWith('outlet.') !== true || !showsVoltage(r),
        );
      },
    },
    {
      id: 'earth-back',
      should: true,
      text: 'closes the protective conductor again once the supply is sound and it was cleared as its sheet says',
      why: 'Nothing is supplied without PE.',
      source: published('BS 7671:2018+A2:2022 722.411.4.1; IEC 61851-1:2017 6.3.1.2'),
      of: 'unit',
      points: ['supply-wiring', 'protective-conductor'],
      judge: (o) => {
        const restored: When = (setUp) => setUp.supply === 'on' && !setUp.disturbed && !setUp.standIn.plugged;
        return judgeAll(metered(readingsOf(o, 'voltage', restored)), (r) => (r.value ?? 0) < PARTED);
      },
    },
  ],
  untold: (papers) => [
    {
      id: 'other-way',
      text: byWindow(papers)
        ? 'notices a PEN conductor that opens while line to neutral stays inside the window'
        : 'notices a PEN conductor that is open while the earthing terminal stays under 70 V',
      why: byWindow(papers)
        ? 'A window looks at line to neutral alone; neighbours can move the neutral sideways.'
        : 'With little current and a good electrode the voltage stays low, and so does the hazard.',
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: {
    opens: 'the open-PEN measure does not open: isolate',
    'opens-earth': 'the open-PEN measure leaves the protective conductor closed: isolate',
    'onto-hazard': 'the unit closes onto the hazard: isolate',
  },
};
