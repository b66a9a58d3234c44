/** Everything that the drawing of one side shows, line by line, in words. */
import type { Moment, Position } from '../attempt/opened/moment.ts';
import type { PlainWhat } from '../attempt/opened/value.ts';
import { whatText } from './differences.ts';
import { DRIVE_WORDS, damageText, latchText, levelsText, potentialText, STANDING_WORDS } from './moment.ts';
import { INDICATOR_WORDS } from './seen.ts';

export interface Fact {
  readonly what: string;
  readonly text: string;
}

export function factsOf(moment: Moment): readonly Fact[] {
  const { pilot, breaker, upstream, unitBreaker, earthPole, lock, damaged } = moment;
  const outlet = Object.entries(moment.volts);
  return [
    { what: 'origin', text: positionsText(moment.origin) },
    ...(breaker === 'closed' ? [] : [fact('breaker', STANDING_WORDS[breaker])]),
    ...(upstream === null ? [] : [fact('upstream', STANDING_WORDS[upstream])]),
    ...(moment.unit === 'connected'
      ? []
      : [{ what: 'unit’s conductors', text: STANDING_WORDS[moment.unit] }]),
    ...(unitBreaker === null ? [] : [fact('unit-breaker', STANDING_WORDS[unitBreaker])]),
    { what: 'contactor’s poles', text: positionsText(moment.poles) },
    fact('coil', STANDING_WORDS[moment.coil]),
    ...(earthPole === null ? [] : [fact('open-pen-pole', STANDING_WORDS[earthPole])]),
    { what: 'control', text: DRIVE_WORDS[pilot.drive] },
    fact('pilot-at-unit', levelsText(pilot.atUnit)),
    fact('pilot-at-outlet', levelsText(pilot.atOutlet)),
    fact('unit-says', INDICATOR_WORDS[moment.indicator]),
    fact('standing', latchText(moment.latches)),
    ...(lock === null ? [] : [fact('lock-motor', STANDING_WORDS[lock])]),
    fact('plug', STANDING_WORDS[moment.plug]),
    ...(damaged.length === 0 ? [] : [{ what: 'damaged by a test', text: damageText(damaged) }]),
    ...outlet.map(([terminal, potential]) => ({
      what: whatText({ id: 'potential', terminal }),
      text: potentialText(potential),
    })),
  ];
}

const fact = (id: PlainWhat, text: string): Fact => ({
  what: whatText({ id }),
  text,
});

/** `L1, N closed` or `L1 open, N closed`: positions by conductor, the same ones together. */
function positionsText(positions: Readonly<Partial<Record<string, Position>>>): string {
  const kinds = [...new Set(Object.values(positions))];
  return kinds
    .map((kind) => {
      const names = Object.keys(positions).filter((name) => positions[name] === kind);
      return `${names.join(', ')} ${kind === undefined ? '' : STANDING_WORDS[kind]}`;
    })
    .join('; ');
}
