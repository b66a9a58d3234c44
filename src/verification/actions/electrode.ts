/** Test action `electrode`: the installation's own earth electrode, taken off the main earthing terminal. */
import type { Reading } from '../../bench/reading.ts';
import type { Ohms } from '../../laws/quantities.ts';
import { isInside, judgeAll, off, readingsOf } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT, PRACTICE } from '../sources.ts';
import type { Papers, TestAction } from '../testAction.ts';

/** By itself alone: with the conductor on, every path in parallel is measured with it. */
const alone = (o: Observed): readonly Reading[] =>
  readingsOf(
    o,
    'electrode',
    (setUp, sample) => off(setUp, sample) && setUp.removed.includes('electrode'),
  ).filter(({ qualifier }) => qualifier !== 'unable');

const ratedOf = ({ site, sheet }: Papers): number =>
  site.circuit.residualDevice?.rated ?? sheet.residual.rated ?? 0.03;

/** Soil dries and freezes: half to half as much again of what the papers say. Common practice, no source. */
const SHARE = { least: 0.5, greatest: 1.5 } as const;
const declared = ({ site }: Papers): Ohms => site.electrodeResistance ?? 0;

const greatestOf = (papers: Papers): Ohms => rulesFor(papers).electrode.greatest(ratedOf(papers));
const sumOf = (papers: Papers): string =>
  `${rulesFor(papers).electrode.touchVoltage} V ÷ ${1000 * ratedOf(papers)} mA = ${greatestOf(papers).toFixed(0)} Ω`;

export const electrode: TestAction = {
  id: 'electrode',
  title: 'Earth electrode',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['earthing'],
  purpose: 'Measure what every earth fault current of this installation has to pass.',
  applies: ({ site }) => site.earthing === 'TT',
  steps: () => [
    { op: 'disconnect', what: 'electrode' },
    { op: 'measure', quantity: 'electrode' },
    { op: 'reconnect', what: 'electrode' },
  ],
  expectations: (papers) => {
    const rules = rulesFor(papers).electrode;
    return [
      {
        id: 'as-papers',
        should: true,
        text: `reads half to half as much again of the ${declared(papers)} Ω in its papers`,
        why: 'Soil varies with the season. Much less means that it has met another earth, much more a poor joint or dry ground.',
        source: PRACTICE,
        of: 'circuit',
        points: ['protective-conductor'],
        judge: (o) =>
          judgeAll(alone(o), (r) =>
            isInside(r, {
              least: SHARE.least * declared(papers),
              greatest: SHARE.greatest * declared(papers),
            }),
          ),
      },
      {
        id: 'too-high',
        should: false,
        text: `reads over ${greatestOf(papers).toFixed(0)} Ω`,
        why: `A fault that the residual device is too coarse to see would hold the case above ${rules.touchVoltage} V for good (${sumOf(papers)}).`,
        source: rules.source,
        of: 'circuit',
        points: ['protective-conductor'],
        judge: (o) => judgeAll(alone(o), (r) => isInside(r, { greatest: greatestOf(papers) })),
      },
    ];
  },
  untold: (papers) => [
    {
      id: 'stays-so',
      toldBy: [],
      ownOnly: true,
      of: 'circuit',
      text: 'has an electrode that reads the same in a dry summer',
      why: `Soil dries and the reading rises. Above ${rulesFor(papers).electrode.stable} Ω it may not be stable: write that down and advise another rod.`,
      source: rulesFor(papers).electrode.stableSource,
    },
    {
      id: 'joined',
      toldBy: ['inspect', 'pe-circuit', 'make-good', 'ze', 'loop'],
      of: 'circuit',
      text: 'has its electrode joined to the main earthing terminal',
      why: 'It was taken off for this; the loop shows whether it is back.',
      source: CIRCUIT,
    },
  ],
  figures: (papers) => [
    {
      id: 'electrode',
      text: 'reads about',
      unit: 'Ω',
      value: declared(papers),
      tolerance: SHARE.least * declared(papers),
      why: 'The figure in the papers; soil varies.',
      source: PRACTICE,
    },
  ],
  limits: (papers) => {
    const rules = rulesFor(papers).electrode;
    return [
      {
        id: 'electrode',
        text: 'greatest resistance of the electrode',
        quantity: 'electrode',
        unit: 'Ω',
        limit: greatestOf(papers),
        kind: 'most',
        sum: sumOf(papers),
        source: rules.source,
        points: ['protective-conductor'],
        applies: (r) => r.quantity === 'electrode',
      },
    ];
  },
  advice: (papers) => {
    const { stable, stableSource } = rulesFor(papers).electrode;
    return [
      {
        id: 'unstable',
        text: `The electrode reads over ${stable} Ω and may not be stable: no limit is broken, but another rod is advised.`,
        source: stableSource,
        isDue: (o) => alone(o).some(({ qualifier, value }) => qualifier === '>' || (value ?? 0) > stable),
      },
    ];
  },
  stops: { 'too-high': 'the electrode failed: do not energise (BS 7671 643.1)' },
};
