/** What test action `volt-drop` ought to show. */
import type { Reading } from '../../bench/reading.ts';
import type { Amps } from '../../laws/quantities.ts';
import { CONTACT_ALLOWANCE } from '../../site/expected.ts';
import { linesOf } from '../../site/site.ts';
import { conductors, ways } from '../actions/standInLoad.ts';
import { loadFor } from '../actions/voltDrop.ts';
import {
  between,
  inState,
  judgeAll,
  outletSupplied,
  readingsOf,
  showsVoltage,
  type When,
} from '../judging.ts';
import type { Observed } from '../observed.ts';
import { offerRange, session } from '../offer.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT } from '../sources.ts';
import type { Papers, TestLines } from '../testAction.ts';

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

export const voltDrop: TestLines = {
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
