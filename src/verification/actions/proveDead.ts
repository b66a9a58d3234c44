/** Test action `prove-dead`: with a proved detector, at the origin and at the supply terminals. */
import { pairsOf } from '../../site/part.ts';
import { livesOf } from '../../site/site.ts';
import { between, isInside, judgeAll, off, readingsOf, showsVoltage } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT, pilotStandard, published } from '../sources.ts';
import type { Finding, Papers, TestAction } from '../testAction.ts';

const pairsAt = ({ site }: Papers, place: string): readonly (readonly [string, string])[] =>
  pairsOf([...livesOf(site), 'PE']).map(([x, y]) => [`${place}.${x}`, `${place}.${y}`] as const);

function everyPairDead(papers: Papers, observed: Observed, place: string): Finding {
  const readings = readingsOf(observed, 'voltage', off);
  const pairs = pairsAt(papers, place).map(([a, b]) => between(readings, a, b));
  if (pairs.some((found) => found.some(showsVoltage))) return 'broken';
  return pairs.every((found) => found.length > 0) ? 'met' : 'not shown';
}

export const proveDead: TestAction = {
  id: 'prove-dead',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: [],
  applies: () => true,
  steps: () => [
    { op: 'check-instruments' },
    { op: 'prove-dead', at: 'origin' },
    { op: 'open-cover' },
    { op: 'discharge' },
    { op: 'prove-dead', at: 'supply' },
  ],
  expectations: (papers) => [
    {
      id: 'origin-dead',
      should: true,
      source: published('HSE GS38, 4th edition 2015; HSG85'),
      of: 'circuit',
      points: ['supply-wiring'],
      judge: (o) => everyPairDead(papers, o, 'origin'),
    },
    {
      id: 'supply-live',
      should: false,
      source: published('EAWR 1989 regs 12 to 14; HSE GS38'),
      of: 'circuit',
      points: ['supply-wiring'],
      judge: (o) => everyPairDead(papers, o, 'supply'),
    },
    {
      id: 'stored',
      should: false,
      source: pilotStandard('8.2.2'),
      of: 'unit',
      points: ['mechanical'],
      judge: (o) =>
        judgeAll(
          readingsOf(o, 'voltage', off).filter((r) => r.between?.[0].startsWith('supply.')),
          (r) => isInside({ ...r, value: Math.abs(r.dc ?? 0), uncertainty: 1 }, { greatest: 60 }),
        ),
    },
  ],
  untold: (papers) => [
    {
      id: 'outlet-side',
      toldBy: ['poles-open'],
      ownOnly: true,
      source: CIRCUIT,
    },
    {
      id: 'insulated',
      toldBy: ['insulation-circuit', 'insulation-unit', 'insulation-outlet'],
      of: 'circuit',
      source: rulesFor(papers).remembered('643.3'),
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: ['origin-dead', 'supply-live'],
};
