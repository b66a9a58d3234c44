/** What test action `prove-dead` ought to show. */
import { showDark } from '../../bench/proofs.ts';
import { pairsOf } from '../../site/part.ts';
import { livesOf } from '../../site/site.ts';
import type { When } from '../judging.ts';
import { between, detected, isInside, judgeAll, off, samplesWhen, showsVoltage } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { pilotStandard, published } from '../sources.ts';
import type { Finding, Papers, TestLines } from '../testAction.ts';

const pairsAt = ({ site }: Papers, place: string): readonly (readonly [string, string])[] =>
  pairsOf([...livesOf(site), 'PE']).map(([x, y]) => [`${place}.${x}`, `${place}.${y}`] as const);

function everyPairDead(papers: Papers, observed: Observed, place: string): Finding {
  const readings = detected(observed, off);
  const pairs = pairsAt(papers, place).map(([a, b]) => between(readings, a, b));
  if (pairs.some((found) => found.some(showsVoltage))) return 'broken';
  return pairs.every((found) => found.length > 0) ? 'met' : 'not shown';
}

/** A look at a place whose detector was tried on the proving unit before and after it. */
const triedBothTimes: When = (_, { operation }) =>
  operation.op === 'prove-dead' && operation.tool === 'two-pole' && operation.proof === 'both';

export const proveDead: TestLines = {
  expectations: (papers) => [
    {
      id: 'detector-proves',
      should: true,
      source: published('HSE GS38, 4th edition 2015; HSG85'),
      of: 'tester',
      points: ['tester'],
      judge: (o) => judgeAll(samplesWhen(o, triedBothTimes), ({ events }) => !showDark(events)),
    },
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
          detected(o, off).filter((r) => r.between?.[0].startsWith('supply.')),
          (r) => isInside({ ...r, value: Math.abs(r.dc ?? 0), uncertainty: 1 }, { greatest: 60 }),
        ),
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: ['detector-proves', 'origin-dead', 'supply-live'],
};
