/** What test action `pfc` ought to show. */
import type { Ohms } from '../../laws/quantities.ts';
import { CONTACT_ALLOWANCE } from '../../site/expected.ts';
import type { Site } from '../../site/site.ts';
import { linesOf } from '../../site/site.ts';
import { aroundLoop, earthLoop, everyLine, near, neutralLoop, toTerminal } from '../actions/originLoop.ts';
import { EARTH, NEUTRAL } from '../actions/pfc.ts';
import { isInside, judgeAll, type When } from '../judging.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT } from '../sources.ts';
import type { Expectation, Limit, Papers, TestLines } from '../testAction.ts';

/** Nothing taken off: earth and bonding carry their part of a fault. */
const connected: When = ({ removed, disturbed }) =>
  !removed.includes('earthing-conductor') && !removed.includes('electrode') && !disturbed;

/**
 * Least loop at which no more flows than the device can break, or the declared consumer unit with it: three lines bolted
 * together draw twice a single one.
 */
function leastLoop(papers: Papers, to: 'neutral' | 'earth'): Pick<Limit, 'limit' | 'values' | 'source'> {
  const { voltage, threePhase, source, conditionalSource } = rulesFor(papers).prospective;
  const { breaker, conditionalRating } = papers.site.circuit;
  const breakingCapacity = Math.max(breaker.breakingCapacity, conditionalRating ?? 0);
  const isDeclared = breakingCapacity > breaker.breakingCapacity;
  const multiple = papers.site.phases === 3 && to === 'neutral' ? threePhase : 1;
  const limit = (multiple * voltage) / breakingCapacity;
  return {
    limit,
    values: { multiple, voltage, breakingCapacity, isDeclared, limit },
    source: isDeclared ? conditionalSource : source,
  };
}

const capacityLimit = (papers: Papers, to: 'neutral' | 'earth', terminal: string): Limit => ({
  id: `capacity-${to}`,
  quantity: 'loop',
  unit: 'Ω',
  ...leastLoop(papers, to),
  kind: 'least',
  points: ['supply-wiring'],
  applies: (r) =>
    r.quantity === 'loop' && r.between?.[0].startsWith('incoming.') === true && r.between[1] === terminal,
});

/** A quarter of the way from the loop to neutral to what the electrodes alone would make of it, Ω. A design choice. */
function asGoodAsJoined(site: Site): Ohms {
  const { metEarthResistance } = site;
  const own = site.electrodeResistance ?? 0;
  const toGround =
    metEarthResistance === null ? own : (own * metEarthResistance) / (own + metEarthResistance);
  const neutral = neutralLoop(site);
  return neutral + 0.25 * Math.max(0, earthLoop(site) - own + toGround - neutral);
}

/** On TT the two loops are worlds apart, elsewhere they are much alike. */
function earthLines(papers: Papers): readonly Expectation[] {
  const { site } = papers;
  if (site.earthing === 'TT')
    return [
      {
        id: 'joined',
        should: false,
        values: { joined: asGoodAsJoined(site) },
        source: rulesFor(papers).regulation('411.3.1.1'),
        of: 'circuit',
        points: ['supply-wiring', 'protective-conductor'],
        judge: (o) =>
          everyLine(
            o,
            papers,
            EARTH,
            connected,
            ({ qualifier, value }) => qualifier !== null || (value ?? 0) > asGoodAsJoined(site),
          ),
      },
    ];
  const { greatest: greatestToEarth } = aroundLoop(earthLoop(site));
  return [
    {
      id: 'earth-way',
      should: true,
      values: { loop: earthLoop(site), allowance: CONTACT_ALLOWANCE, greatest: greatestToEarth },
      source: rulesFor(papers).regulation('643.7.3.201'),
      of: 'circuit',
      points: ['protective-conductor', 'supply-wiring'],
      judge: (o) => everyLine(o, papers, EARTH, connected, (r) => near(r, { greatest: greatestToEarth })),
    },
    ...(site.earthing === 'TN-C-S'
      ? [
          {
            id: 'alike',
            should: true,
            values: { allowance: CONTACT_ALLOWANCE },
            source: CIRCUIT,
            of: 'circuit',
            points: ['protective-conductor', 'supply-wiring'],
            judge: (o) => alike(papers, o),
          } satisfies Expectation,
        ]
      : []),
  ];
}

const alike = (papers: Papers, o: Parameters<Expectation['judge']>[0]) => {
  const figures = (terminal: string) =>
    linesOf(papers.site).flatMap(
      (line) =>
        toTerminal(o, papers, terminal, connected).find((r) => r.between?.[0] === `incoming.${line}`) ?? [],
    );
  const [neutral, earth] = [figures(NEUTRAL), figures(EARTH)];
  return judgeAll(neutral.length < linesOf(papers.site).length ? [] : earth, (r) => {
    const other = neutral.find((n) => n.between?.[0] === r.between?.[0]);
    return (
      other?.value != null &&
      isInside(r, {
        least: other.value - (other.uncertainty ?? 0) - CONTACT_ALLOWANCE,
        greatest: other.value + (other.uncertainty ?? 0) + CONTACT_ALLOWANCE,
      })
    );
  });
};

export const pfc: TestLines = {
  expectations: (papers) => [
    {
      id: 'neutral-way',
      should: true,
      values: { loop: neutralLoop(papers.site), ...aroundLoop(neutralLoop(papers.site)) },
      source: rulesFor(papers).regulation('643.7.3.201'),
      of: 'circuit',
      points: ['supply-wiring'],
      judge: (o) =>
        everyLine(o, papers, NEUTRAL, connected, (r) => near(r, aroundLoop(neutralLoop(papers.site)))),
    },
    {
      id: 'no-return',
      should: false,
      source: CIRCUIT,
      of: 'circuit',
      points: ['supply-wiring', 'protective-conductor'],
      judge: (o) => {
        const found = [NEUTRAL, EARTH].map((to) =>
          everyLine(o, papers, to, connected, ({ qualifier }) => qualifier !== 'unable'),
        );
        return found.includes('broken') ? 'broken' : found.includes('not shown') ? 'not shown' : 'met';
      },
    },
    ...earthLines(papers),
  ],
  figures: (papers) => [
    {
      id: 'current',
      values: {
        voltage: rulesFor(papers).prospective.voltage,
        loop: neutralLoop(papers.site),
        threePhase: papers.site.phases === 3,
      },
      unit: 'A',
      value: rulesFor(papers).prospective.voltage / neutralLoop(papers.site),
      tolerance: (0.15 * rulesFor(papers).prospective.voltage) / neutralLoop(papers.site),
      source: rulesFor(papers).prospective.source,
    },
  ],
  limits: (papers) => [
    capacityLimit(papers, 'neutral', NEUTRAL),
    ...(papers.site.earthing === 'TT' ? [] : [capacityLimit(papers, 'earth', EARTH)]),
  ],
  stops: ['no-return'],
};
