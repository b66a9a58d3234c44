/** Test action `volt-drop`: the stand-in draws a current, and the volts lost from the origin to the outlet are read. */
import type { Reading } from '../../bench/reading.ts';
import type { Amps } from '../../laws/quantities.ts';
import { CONTACT_ALLOWANCE } from '../../site/expected.ts';
import { linesOf } from '../../site/site.ts';
import {
  atOutlet,
  between,
  inState,
  judgeAll,
  outletSupplied,
  readingsOf,
  showsVoltage,
  type When,
} from '../judging.ts';
import type { Observed } from '../observed.ts';
import { cleared, offerRange, session, unplug, untilSupplied } from '../offer.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT, PRACTICE } from '../sources.ts';
import { voltage } from '../steps.ts';
import type { Papers, TestAction } from '../testAction.ts';
import { bearable, conductors, ways } from './standInLoad.ts';

/** What the stand-in is to draw, whole amperes: as much as is offered, as far as the supply bears it. */
const loadFor = (papers: Papers): Amps =>
  Math.max(1, Math.floor(Math.min(offerRange(papers).least, bearable(papers))));

const loaded: When = (setUp, sample) => inState('C')(setUp, sample) && setUp.standIn.load > 0;

/** A load of no more than is offered, put on while the unit was supplying. */
const loadedWithin =
  (papers: Papers, o: Observed): When =>
  (setUp, sample) => {
    if (!loaded(setUp, sample) || setUp.standIn.load > offerRange(papers, setUp).least) return false;
    const before = session(o, sample).findLast((one) => one.setUp.standIn.load === 0);
    return before?.seen.indicator === 'charging';
  };

interface Loss {
  readonly origin: Reading;
  readonly outlet: Reading;
  readonly amps: Amps;
}

/** The readings at both ends of each line that were taken with the same load. */
const losses = ({ site }: Papers, o: Observed): readonly Loss[] =>
  linesOf(site).flatMap((line) => {
    const at = (place: string, when: When) =>
      between(readingsOf(o, 'voltage', when), `${place}.${line}`, `${place}.N`).at(-1);
    const amps = o.samples.findLast((s) => loaded(s.setUp, s))?.setUp.standIn.load ?? 0;
    const alike: When = (setUp, sample) => loaded(setUp, sample) && setUp.standIn.load === amps;
    const [origin, outlet] = [at('incoming', alike), at('outlet', alike)];
    // An outlet that is dead draws nothing: nothing is lost on the way.
    return origin === undefined || outlet === undefined || !showsVoltage(outlet)
      ? []
      : [{ origin, outlet, amps }];
  });

/** What the load makes of the conductors and of as much more for contacts; drawn at 230 V or a little above. */
function withinSum(papers: Papers, { origin, outlet, amps }: Loss): boolean {
  const margin = (origin.uncertainty ?? 0) + (outlet.uncertainty ?? 0);
  const most = 1.1 * amps * (conductors(papers) + CONTACT_ALLOWANCE);
  const lost = (origin.value ?? 0) - (outlet.value ?? 0);
  return lost <= most + margin;
}

export const voltDrop: TestAction = {
  id: 'volt-drop',
  stage: 'protection',
  optional: true,
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['supply', 'breaker', 'circuit', 'outlet', 'contactor', 'pilot', 'filter'],
  applies: (papers) => papers.sheet.permission !== 'held' && offerRange(papers).least > 0,
  steps: (papers) => [
    ...untilSupplied(papers),
    { op: 'vehicle', load: loadFor(papers) },
    ...linesOf(papers.site).flatMap((line) => [
      voltage(`incoming.${line}`, 'incoming.N'),
      voltage(atOutlet(line), atOutlet('N')),
    ]),
    { op: 'vehicle', load: 0 },
    ...unplug,
    // A window takes the volts lost in a bad joint for an open PEN: whether it did or not, it is cleared.
    ...(papers.sheet.openPen === 'voltage-window' ? cleared(papers, 'openPen') : []),
  ],
  expectations: (papers) => [
    {
      id: 'more-than-sum',
      should: false,
      source: rulesFor(papers).regulation('643.11', 'sum-from-iec-60228'),
      of: 'circuit',
      points: ['supply-wiring', 'switching'],
      judge: (o) => judgeAll(losses(papers, o), (loss) => withinSum(papers, loss)),
    },
    {
      id: 'stays-on',
      should: true,
      source: CIRCUIT,
      of: 'unit',
      points: ['switching', 'supply-wiring', 'residual-direct'],
      judge: (o) => outletSupplied(papers, o, loadedWithin(papers, o)),
    },
  ],
  untold: () => [
    {
      id: 'warm',
      toldBy: [],
      source: PRACTICE,
    },
  ],
  figures: (papers) => [
    {
      id: 'lost',
      values: { amps: loadFor(papers), both: ways(papers) === 2, ohms: conductors(papers) },
      unit: 'V',
      value: loadFor(papers) * conductors(papers),
      tolerance: 1 + 0.25 * loadFor(papers) * conductors(papers),
      source: CIRCUIT,
    },
  ],
  limits: () => [],
  stops: [],
};
