/** Test action `open-pen`: the open-PEN measure, by the disturbance that it watches for. */
import type { OperationInput } from '../../bench/operation.ts';
import type { ReadingOf } from '../../bench/reading.ts';
import type { Seconds, Volts } from '../../laws/quantities.ts';
import { OPEN_PEN_IGNORED, OPEN_PEN_TIME, TOUCH_LIMIT } from '../../laws/supplyLimits.ts';
import { linesOf } from '../../site/site.ts';
import { opensEarthUnpowered } from '../../unit/design.ts';
import {
  between,
  inState,
  judgeAll,
  outletDead,
  outletSupplied,
  readingsOf,
  showsVoltage,
  type When,
} from '../judging.ts';
import type { Observed, Sample } from '../observed.ts';
import { cleared, mayWait, unplug, untilSupplied } from '../offer.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT, SHEET } from '../sources.ts';
import { outletVoltages, voltage, waitFor } from '../steps.ts';
import type { Expectation, Papers, TestAction } from '../testAction.ts';
import { byWindow, disturb, disturbances, hazards, restore } from './penHazard.ts';

/** Shorter than the 4 s that a measure may ignore, s. */
const SHORT: Seconds = 3;
const HELD: Seconds = 10;

/**
 * With PE parted the filters hold the case about half-way between line and neutral, behind a high resistance; a meter
 * of 10 MΩ shows that and takes no harm. Connected to the earthing terminal it has none.
 */
const metToParted = (papers: Papers): OperationInput => ({
  op: 'measure',
  quantity: 'voltage',
  between: ['met', parted(papers)],
  tool: 'meter',
});

/** What hangs on the protective conductor beyond the pole: exposed metal, or the outlet alone where that stays earthed. */
const parted = ({ sheet }: Papers) => (opensEarthUnpowered(sheet) ? 'outlet.PE' : 'case');
/** Between none and half-way, V. */
const PARTED: Volts = 30;

const metered = (
  papers: Papers,
  readings: readonly ReadingOf<'voltage'>[],
): readonly ReadingOf<'voltage'>[] =>
  between(readings, 'met', parted(papers)).filter(({ tool }) => tool === 'meter');

/** Read 5 s or more after a hazard began, and while it lasts. */
const afterFiveSeconds =
  (papers: Papers, o: Observed): When =>
  ({ supply, standIn }, sample) => {
    const during = hazards(papers, o).find(({ samples }) => samples.includes(sample));
    const at = sample.readings[0]?.at ?? sample.seen.at;
    return (
      supply === 'on' &&
      standIn.plugged &&
      during !== undefined &&
      during.began !== null &&
      at - during.began >= OPEN_PEN_TIME
    );
  };

/** Whether the unit said that it was charging just before: what never closed cannot be heard to open. */
const supplyingBefore = (o: Observed, first: Sample | undefined): boolean =>
  first !== undefined && o.samples[o.samples.indexOf(first) - 1]?.seen.indicator === 'charging';

/** Samples after a short disturbance, before anything was reset and with no longer one before. */
const afterShort =
  (o: Observed): When =>
  (setUp, sample) => {
    const index = o.samples.indexOf(sample);
    const before = disturbances(o).filter(({ next }) => next <= index);
    const first = before[0];
    return (
      inState('C')(setUp, sample) &&
      first !== undefined &&
      before.every(
        ({ began, ended }) => began !== null && ended !== null && ended - began < OPEN_PEN_IGNORED,
      ) &&
      !o.samples.slice(first.next, index + 1).some(({ operation }) => operation.op === 'reset')
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
          values: { window: byWindow(papers), outlet: opensEarthUnpowered(papers.sheet) },
          source: rulesFor(papers).regulation('722.411.4.1'),
          of: 'unit',
          points: ['supply-wiring', 'protective-conductor'],
          judge: (o) => {
            const late = afterFiveSeconds(papers, o);
            return byWindow(papers)
              ? judgeAll(metered(papers, readingsOf(o, 'voltage', late)), (r) => (r.value ?? 0) > PARTED)
              : judgeAll(
                  between(readingsOf(o, 'voltage', late), parted(papers), 'earth'),
                  (r) => (r.value ?? 0) - (r.uncertainty ?? 0) <= TOUCH_LIMIT,
                );
          },
        },
      ];

/** A disturbance that is over before the measure has to act, and what became of the supply. */
const shortly = (papers: Papers): readonly OperationInput[] => [
  disturb(papers),
  waitFor(SHORT),
  restore,
  waitFor(6),
  ...linesOf(papers.site).map((x) => voltage(`outlet.${x}`, 'outlet.N')),
];

/** The rules permit it and ask for nothing (BS 7671 722.411.4.1): it is judged only where the sheet says so. */
const ridesOut = (papers: Papers): readonly Expectation[] =>
  papers.sheet.openPenRidesOut
    ? [
        {
          id: 'rides-out',
          should: true,
          source: SHEET,
          of: 'unit',
          points: ['supply-wiring', 'switching'],
          judge: (o) =>
            outletSupplied(
              papers,
              o,
              (setUp, sample) => afterShort(o)(setUp, sample) && !mayWait(papers, o, sample),
            ),
        },
      ]
    : [];

export const openPen: TestAction = {
  id: 'open-pen',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['open-pen', 'unit-earth', 'contactor', 'filter'],
  applies: ({ site, sheet }) => sheet.openPen !== 'none' && site.earthing === 'TN-C-S',
  steps: (papers) => [
    ...untilSupplied(papers),
    ...(papers.sheet.openPenRidesOut ? shortly(papers) : []),
    disturb(papers),
    waitFor(HELD),
    ...(byWindow(papers) ? [] : [voltage('met', 'earth')]),
    ...outletVoltages(papers),
    byWindow(papers) ? metToParted(papers) : voltage(parted(papers), 'earth'),
    { op: 'reset', what: 'unit' },
    waitFor(3),
    ...linesOf(papers.site).map((x) => voltage(`outlet.${x}`, 'outlet.N')),
    restore,
    ...unplug,
    ...cleared(papers, 'openPen'),
    metToParted(papers),
  ],
  expectations: (papers) => [
    ...ridesOut(papers),
    {
      id: 'opens',
      should: true,
      values: { window: byWindow(papers) },
      source: rulesFor(papers).regulation('722.411.4.1'),
      of: 'unit',
      points: ['supply-wiring', 'switching'],
      judge: (o) => outletDead(papers, o, afterFiveSeconds(papers, o)),
    },
    {
      id: 'in-time',
      should: true,
      source: rulesFor(papers).regulation('722.411.4.1'),
      of: 'unit',
      points: ['supply-wiring', 'switching'],
      judge: (o) =>
        judgeAll(
          hazards(papers, o).filter(
            ({ began, samples }) =>
              began !== null &&
              supplyingBefore(o, samples[0]) &&
              (samples.at(-1)?.seen.at ?? began) - began >= OPEN_PEN_TIME,
          ),
          ({ began, samples }) =>
            samples
              .flatMap(({ events }) => events)
              .some(({ what, at }) => what === 'contactor opened' && at - (began ?? 0) <= OPEN_PEN_TIME),
        ),
    },
    ...opensEarth(papers),
    {
      id: 'says-so',
      should: true,
      source: SHEET,
      of: 'unit',
      points: ['supply-wiring', 'switching'],
      judge: (o) =>
        judgeAll(
          o.samples.filter((s) => afterFiveSeconds(papers, o)(s.setUp, s)),
          ({ seen }) => seen.indicator === 'fault',
        ),
    },
    {
      id: 'onto-hazard',
      should: false,
      source: rulesFor(papers).regulation('722.411.4.1'),
      of: 'unit',
      points: ['supply-wiring', 'switching'],
      judge: (o) => {
        const late = afterFiveSeconds(papers, o);
        return judgeAll(
          hazards(papers, o).flatMap(({ samples }) => {
            const pressed = samples.findIndex(({ operation }) => operation.op === 'reset');
            return pressed < 0
              ? []
              : samples
                  .slice(pressed)
                  .filter((sample) => late(sample.setUp, sample))
                  .flatMap(({ readings }) => readings.filter((r) => r.quantity === 'voltage'))
                  .filter((r) => r.between?.[0].startsWith('outlet.'));
          }),
          (r) => !showsVoltage(r),
        );
      },
    },
    {
      id: 'earth-back',
      should: true,
      values: { outlet: opensEarthUnpowered(papers.sheet) },
      source: rulesFor(papers).regulation('722.411.4.1; IEC 61851-1:2017 6.3.1.2'),
      of: 'unit',
      points: ['supply-wiring', 'protective-conductor'],
      judge: (o) => {
        const restored: When = (setUp) => setUp.supply === 'on' && !setUp.disturbed && !setUp.standIn.plugged;
        return judgeAll(metered(papers, readingsOf(o, 'voltage', restored)), (r) => (r.value ?? 0) < PARTED);
      },
    },
  ],
  untold: (papers) => [
    {
      id: 'other-way',
      toldBy: [],
      values: { window: byWindow(papers) },
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: ['opens', 'opens-earth', 'onto-hazard'],
};
