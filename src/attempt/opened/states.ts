/**
 * What stands otherwise in the unit than in its twin at one moment: contacts, what is driven, the pilot, potentials,
 * each with the piece of physics or of logic that explains it. Why anything is wrong at all is not known here.
 */
import { PILOT_ALIKE } from '../../bench/readings/pilot.ts';
import type { Live } from '../../laws/conductors.ts';
import type { Halves, Moment } from './moment.ts';
import type { Potential } from './potentials.ts';
import type { Place } from './roots.ts';
import type { PlainWhat, PlainWhy, Value, What, Why } from './value.ts';
import { sameValue } from './value.ts';

export interface State {
  readonly place: Place;
  readonly what: What;
  readonly unit: Value;
  readonly twin: Value;
  /** Null where the catalogue alone says why. */
  readonly why: Why | null;
}

/** Potentials closer than this are drawn alike, V and share. A design choice: about what a detector could tell. */
const ALIKE = { volts: 3, share: 0.02 } as const;

/** In the order in which one follows from another. */
export const stateDifferences = (unit: Moment, twin: Moment): readonly State[] => [
  ...contactStates(unit, twin),
  ...drivenStates(unit, twin),
  ...pilotStates(unit, twin),
  ...potentialStates(unit, twin),
];

/** The state, if the two differ. */
export const stateIf = (
  place: Place,
  what: PlainWhat | What,
  [unit, twin]: readonly [Value, Value],
  why: PlainWhy | Why,
): readonly State[] =>
  sameValue(unit, twin)
    ? []
    : [
        {
          place,
          what: typeof what === 'string' ? { id: what } : what,
          unit,
          twin,
          why: typeof why === 'string' ? { id: why } : why,
        },
      ];

function contactStates(unit: Moment, twin: Moment): readonly State[] {
  const lives = Object.keys(unit.poles) as Live[];
  const of = (key: 'breaker' | 'upstream' | 'unitBreaker' | 'earthPole') =>
    [{ id: unit[key] ?? 'none' }, { id: twin[key] ?? 'none' }] as const;
  return [
    ...stateIf('origin.breaker', 'breaker', of('breaker'), 'breaker-curve'),
    ...stateIf('origin.residual', 'upstream', of('upstream'), 'device-sum'),
    ...stateIf('unit.breaker', 'unit-breaker', of('unitBreaker'), 'own-sensing'),
    ...lives.flatMap((live) =>
      stateIf(
        `pole.${live}`,
        { id: 'pole', live },
        [{ id: unit.poles[live] ?? 'none' }, { id: twin.poles[live] ?? 'none' }],
        whyPole(unit, twin, live),
      ),
    ),
    ...stateIf('pe.pole', 'open-pen-pole', of('earthPole'), 'open-pen-limit'),
    ...stateIf(
      'lock',
      'plug',
      [{ id: unit.plug }, { id: twin.plug }],
      unit.lock === 'driven' && unit.plug !== 'held'
        ? 'driven-not-held'
        : unit.lock === 'not-driven' && unit.plug === 'held'
          ? 'held-not-driven'
          : 'lock-follows',
    ),
  ];
}

function whyPole(unit: Moment, twin: Moment, live: Live): Why {
  const isClosed = unit.poles[live] === 'closed';
  const isDriven = unit.coil === 'driven';
  if (isClosed && !isDriven) return { id: 'closed-undriven', live };
  if (!isClosed && isDriven) return { id: 'open-though-driven', live };
  if (isClosed) return { id: twin.coil === 'driven' ? 'closed-as-asked' : 'closed-driven-here', live };
  return { id: twin.coil === 'driven' ? 'open-not-driven-here' : 'open-as-asked', live };
}

function drivenStates(unit: Moment, twin: Moment): readonly State[] {
  const because = whyDriven(unit, twin);
  const damage = ({ damaged }: Moment): Value =>
    damaged.length === 0 ? { id: 'none' } : { id: 'damaged', damaged };
  return [
    ...stateIf('coil', 'coil', [{ id: unit.coil }, { id: twin.coil }], because),
    ...stateIf('lock', 'lock-motor', [{ id: unit.lock ?? 'none' }, { id: twin.lock ?? 'none' }], because),
    ...stateIf(
      'control',
      'standing',
      [
        { id: 'latches', latches: unit.latches },
        { id: 'latches', latches: twin.latches },
      ],
      'latched-until-cleared',
    ),
    ...stateIf(
      'control',
      'unit-says',
      [
        { id: 'indicator', indicator: unit.indicator },
        { id: 'indicator', indicator: twin.indicator },
      ],
      because,
    ),
    ...stateIf('control', 'damage', [damage(unit), damage(twin)], 'test-voltage'),
  ];
}

function whyDriven(unit: Moment, twin: Moment): Why {
  if (unit.pilot.band !== twin.pilot.band)
    return { id: 'bands', unit: unit.pilot.band, twin: twin.pilot.band };
  if (unit.latches.join() !== twin.latches.join())
    return { id: 'latches', unit: unit.latches, twin: twin.latches };
  return { id: 'control-otherwise' };
}

function pilotStates(unit: Moment, twin: Moment): readonly State[] {
  const [here, there] = [unit.pilot, twin.pilot];
  const levels = (place: Place, what: PlainWhat, a: Halves, b: Halves, why: PlainWhy) =>
    Math.abs(a.high - b.high) > PILOT_ALIKE || Math.abs(a.low - b.low) > PILOT_ALIKE
      ? stateIf(
          place,
          what,
          [
            { id: 'levels', ...a },
            { id: 'levels', ...b },
          ],
          why,
        )
      : [];
  return [
    ...stateIf(
      'control',
      'pilot-drive',
      [
        { id: 'drive', drive: here.drive },
        { id: 'drive', drive: there.drive },
      ],
      'pilot-follows-state',
    ),
    ...(here.drive === there.drive
      ? stateIf(
          'control',
          'pilot-high-for',
          [
            { id: 'share-of-period', share: here.duty },
            { id: 'share-of-period', share: there.duty },
          ],
          'width-offers',
        )
      : []),
    ...levels('pilot.resistor', 'pilot-at-unit', here.atUnit, there.atUnit, 'voltage-shared'),
    ...levels('pilot.outlet', 'pilot-at-outlet', here.atOutlet, there.atOutlet, 'lost-on-the-way'),
  ];
}

function isAlike(terminal: string, a: Potential, b: Potential): boolean {
  const near = Math.abs(a.volts - b.volts) <= ALIKE.volts + ALIKE.share * Math.max(a.volts, b.volts);
  if (a.tiedTo !== null) return near;
  if (a.hold !== 'none' && b.hold !== 'none') return near;
  // What nothing holds stands at no voltage of its own; a live conductor that is as good as dead is no other for it.
  const held = a.hold === 'none' ? b : a;
  return a.hold === b.hold || (isLiveConductor(terminal) && held.volts <= ALIKE.volts);
}

const isLiveConductor = (terminal: string): boolean => /\.(L\d|N)$/.test(terminal);

const potentialStates = (unit: Moment, twin: Moment): readonly State[] =>
  Object.entries(unit.volts).flatMap(([terminal, here]) => {
    const there = twin.volts[terminal];
    if (there === undefined || isAlike(terminal, here, there)) return [];
    return stateIf(
      `volts.${terminal}`,
      { id: 'potential', terminal },
      [
        { id: 'potential', ...here },
        { id: 'potential', ...there },
      ],
      whyPotential(unit, terminal, here),
    );
  });

function whyPotential(unit: Moment, terminal: string, here: Potential): Why {
  const [place, conductor] = terminal.split('.');
  const live = place === 'outlet' ? (conductor as Live) : null;
  const pole = live === null ? undefined : unit.poles[live];
  if (here.hold === 'faint') return { id: 'held-faintly' };
  if (here.hold === 'none') return { id: 'floats', pole: pole === 'open' ? live : null, tiedTo: here.tiedTo };
  if (live !== null && pole === 'closed') return { id: 'closed-to-supply', live };
  if (live !== null && pole === 'open') return { id: 'open-and-tied', live };
  if (conductor === 'PE' || place === 'case' || place === 'met') return { id: 'path-to-earth' };
  return { id: 'circuit-brings' };
}
