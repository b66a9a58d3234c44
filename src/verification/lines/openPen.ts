/** What test action `open-pen` ought to show. */
import type { ReadingOf } from '../../bench/reading.ts';
import type { Volts } from '../../laws/quantities.ts';
import { OPEN_PEN_IGNORED, OPEN_PEN_TIME, TOUCH_LIMIT } from '../../laws/supplyLimits.ts';
import { opensEarthUnpowered } from '../../unit/design.ts';
import { parted } from '../actions/openPen.ts';
import { byWindow, disturbances, hazards } from '../actions/penHazard.ts';
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
import { mayWait } from '../offer.ts';
import { rulesFor } from '../rules/rules.ts';
import { SHEET } from '../sources.ts';
import type { Expectation, Papers, TestLines } from '../testAction.ts';

/** Between none and half-way, V. */
const PARTED: Volts = 30;

const metered = (
  papers: Papers,
  readings: readonly ReadingOf<'voltage'>[],
): readonly ReadingOf<'voltage'>[] =>
  between(readings, 'met', parted(papers)).filter(({ tool }) => tool === 'meter');

/** Read 5 s or more after a hazard began, and while it lasts. */
const afterFiveSeconds = (papers: Papers, o: Observed): When => {
  const all = hazards(papers, o);
  return ({ supply, standIn }, sample) => {
    const during = all.find(({ samples }) => samples.includes(sample));
    const at = sample.readings[0]?.at ?? sample.seen.at;
    return (
      supply === 'on' &&
      standIn.plugged &&
      during !== undefined &&
      during.began !== null &&
      at - during.began >= OPEN_PEN_TIME
    );
  };
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

export const openPen: TestLines = {
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
        judgeAll(samplesWhen(o, afterFiveSeconds(papers, o)), ({ seen }) => seen.indicator === 'fault'),
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
  figures: () => [],
  limits: () => [],
  stops: ['opens', 'opens-earth', 'onto-hazard'],
};
