/** Test action `poles-open`: across every pole of the contactor, dead: the only test that finds a welded neutral pole. */
import type { Reading } from '../../bench/reading.ts';
import type { Ohms } from '../../laws/quantities.ts';
import { livesOf } from '../../site/site.ts';
import { isInside, judgeAll } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { CIRCUIT, pilotStandard, published, SHEET } from '../sources.ts';
import { continuity } from '../steps.ts';
import type { Finding, Papers, TestAction } from '../testAction.ts';
import { continuityOf } from './protectivePath.ts';

/** Below this a pole is closed: welded, or bridged by metal, Ω. Common practice, no source. */
const WELDED: Ohms = 1;
/** The end of the tester's range: what reads more is open to it, Ω. */
const RANGE_END: Ohms = 2000;

/** The least that an open pole may read: what the sheet says lies across it, or the end of the range. */
const leastOpen = ({ sheet }: Papers): Ohms => Math.min(RANGE_END, sheet.poleBleed ?? Infinity);

function everyPole(papers: Papers, o: Observed, isMet: (r: Reading) => boolean): Finding {
  const poles = livesOf(papers.site).map((x) => continuityOf(o, `supply.${x}`, `outlet.${x}`));
  const finding = judgeAll(poles.flat(), isMet);
  return finding === 'met' && poles.some((readings) => readings.length === 0) ? 'not shown' : finding;
}

export const polesOpen: TestAction = {
  id: 'poles-open',
  title: 'Every pole open',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['contactor'],
  purpose: 'Show that the contactor parts every live conductor, the neutral among them.',
  applies: () => true,
  steps: ({ site }) => livesOf(site).map((x) => continuity(`supply.${x}`, `outlet.${x}`)),
  expectations: (papers) => [
    {
      id: 'over-range',
      should: true,
      text:
        papers.sheet.poleBleed === null
          ? 'reads over-range across every pole'
          : `reads no less than the ${papers.sheet.poleBleed / 1000} kΩ that its sheet gives, across every pole`,
      why: 'With no power the contactor is open, and nothing else joins its two sides.',
      source: papers.sheet.poleBleed === null ? pilotStandard('6.3.1') : SHEET,
      of: 'unit',
      points: ['switching', 'insulation'],
      judge: (o) => everyPole(papers, o, (r) => isInside(r, { least: leastOpen(papers) })),
    },
    {
      id: 'welded',
      should: false,
      text: `reads under ${WELDED} Ω across any pole`,
      why: 'All live conductors are to be opened. A pole that stays closed leaves its conductor at the outlet.',
      source: published('IEC 61851-1:2017 6.3.1 and 8.1; BS 7671:2018+A2:2022 722.531.3.101'),
      of: 'unit',
      points: ['switching'],
      judge: (o) => everyPole(papers, o, (r) => r.qualifier === '>' || (r.value ?? 0) >= WELDED),
    },
  ],
  untold: () => [
    {
      id: 'closes',
      toldBy: [
        'state-c',
        'c-to-b',
        'state-d',
        'loop',
        'volt-drop',
        'residual-half',
        'recovery',
        'supply-return',
      ],
      text: 'closes every pole when it should',
      why: 'Nothing drives the contactor now.',
      source: CIRCUIT,
    },
    {
      id: 'when-live',
      toldBy: [
        'c-to-b',
        'unplug',
        'residual-origin',
        'residual-rated',
        'residual-five',
        'residual-ramp',
        'half-wave',
        'dc-ramp',
        'dc-step',
        'residual-again',
        'pilot-short',
        'pilot-open',
        'diode-in-c',
        'pe-open',
        'stop',
      ],
      text: 'opens every pole in time',
      why: 'They are open; how fast they part is timed with the outlet supplied.',
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: { welded: 'a pole of the contactor does not open: do not energise' },
};
