/** What test action `electrode` ought to show. */
import type { Reading } from '../../bench/reading.ts';
import type { Ohms } from '../../laws/quantities.ts';
import { ELECTRODE_SHARE } from '../../site/expected.ts';
import { isInside, judgeAll, off, readingsOf } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { PRACTICE } from '../sources.ts';
import type { Papers, TestLines, Values } from '../testAction.ts';

/** By itself alone: with the conductor on, every path in parallel is measured with it. */
const alone = (o: Observed): readonly Reading[] =>
  readingsOf(
    o,
    'electrode',
    (setUp, sample) => off(setUp, sample) && setUp.removed.includes('electrode'),
  ).filter(({ qualifier }) => qualifier !== 'unable');

const ratedOf = ({ site, sheet }: Papers): number =>
  site.circuit.residualDevice?.rated ?? sheet.residual.rated ?? 0.03;

const declared = ({ site }: Papers): Ohms => site.electrodeResistance ?? 0;

const greatestOf = (papers: Papers): Ohms => rulesFor(papers).electrode.greatest(ratedOf(papers));
const limitValues = (papers: Papers): Values => ({
  touchVoltage: rulesFor(papers).electrode.touchVoltage,
  rated: ratedOf(papers),
  greatest: greatestOf(papers),
});

export const electrode: TestLines = {
  expectations: (papers) => {
    const rules = rulesFor(papers).electrode;
    const range = {
      least: ELECTRODE_SHARE.least * declared(papers),
      greatest: ELECTRODE_SHARE.greatest * declared(papers),
    };
    return [
      {
        id: 'as-papers',
        should: true,
        values: { declared: declared(papers), ...range },
        source: PRACTICE,
        of: 'circuit',
        points: ['protective-conductor'],
        judge: (o) => judgeAll(alone(o), (r) => isInside(r, range)),
      },
      {
        id: 'too-high',
        should: false,
        values: limitValues(papers),
        source: rules.source,
        of: 'circuit',
        points: ['protective-conductor'],
        judge: (o) => judgeAll(alone(o), (r) => isInside(r, { greatest: greatestOf(papers) })),
      },
    ];
  },
  figures: (papers) => [
    {
      id: 'electrode',
      unit: 'Ω',
      value: declared(papers),
      tolerance: ELECTRODE_SHARE.least * declared(papers),
      source: PRACTICE,
    },
  ],
  limits: (papers) => {
    const rules = rulesFor(papers).electrode;
    return [
      {
        id: 'electrode',
        values: limitValues(papers),
        quantity: 'electrode',
        unit: 'Ω',
        limit: greatestOf(papers),
        kind: 'most',
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
        values: { stable },
        source: stableSource,
        isDue: (o) => alone(o).some(({ qualifier, value }) => qualifier === '>' || (value ?? 0) > stable),
      },
    ];
  },
  stops: ['too-high'],
};
