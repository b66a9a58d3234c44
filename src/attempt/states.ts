/**
 * What stands otherwise in the unit than in its twin at one moment: contacts, what is driven, the pilot, potentials,
 * each with the sentence of physics or of logic that explains it. Why anything is wrong at all is not known here.
 */
import type { Live } from '../laws/conductors.ts';
import type { Halves, Moment } from './moment.ts';
import {
  driveText,
  latchText,
  levelsText,
  PILOT_ALIKE,
  potentialText,
  terminalWords,
} from './momentWords.ts';
import type { Potential } from './potentials.ts';
import type { Place } from './roots.ts';

export interface State {
  readonly place: Place;
  readonly what: string;
  readonly unit: string;
  readonly twin: string;
  readonly why: string;
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
  what: string,
  [unit, twin]: readonly [string, string],
  why: string,
): readonly State[] => (unit === twin ? [] : [{ place, what, unit, twin, why }]);

function contactStates(unit: Moment, twin: Moment): readonly State[] {
  const lives = Object.keys(unit.poles) as Live[];
  const of = (key: 'breaker' | 'upstream' | 'unitBreaker' | 'earthPole') =>
    [unit[key] ?? 'none', twin[key] ?? 'none'] as const;
  return [
    ...stateIf(
      'origin.breaker',
      'circuit’s breaker',
      of('breaker'),
      'It opens on more current than its curve allows.',
    ),
    ...stateIf(
      'origin.residual',
      'residual device at the origin',
      of('upstream'),
      'It opens when the live conductors through it do not sum to nothing.',
    ),
    ...stateIf(
      'unit.breaker',
      'unit’s own breaker',
      of('unitBreaker'),
      'It opens on the unit’s own residual or d.c. sensing.',
    ),
    ...lives.flatMap((live) =>
      stateIf(
        `pole.${live}`,
        `${live} pole`,
        [unit.poles[live] ?? '', twin.poles[live] ?? ''],
        whyPole(unit, twin, live),
      ),
    ),
    ...stateIf(
      'pe.pole',
      'PE pole of the open-PEN measure',
      of('earthPole'),
      'It opens when the measure has seen its limit passed for long enough.',
    ),
    ...stateIf(
      'lock',
      'plug',
      [unit.plug, twin.plug],
      unit.lock === 'driven' && unit.plug !== 'held'
        ? 'The lock is driven, and the plug is not held.'
        : unit.lock === 'not driven' && unit.plug === 'held'
          ? 'The lock is not driven, and the plug is held.'
          : 'The lock follows the control.',
    ),
  ];
}

function whyPole(unit: Moment, twin: Moment, live: Live): string {
  const isClosed = unit.poles[live] === 'closed';
  const isDriven = unit.coil === 'driven';
  if (isClosed && !isDriven) return `The ${live} pole is closed though its coil is not driven.`;
  if (!isClosed && isDriven) return `The ${live} pole is open though its coil is driven.`;
  if (isClosed)
    return twin.coil === 'driven'
      ? `The ${live} pole is closed, as its coil asks; the twin’s has not moved.`
      : `The ${live} pole is closed: its coil is driven here, and not in the twin.`;
  return twin.coil === 'driven'
    ? `The ${live} pole is open: its coil is not driven here, and is in the twin.`
    : `The ${live} pole is open, as its coil asks.`;
}

function drivenStates(unit: Moment, twin: Moment): readonly State[] {
  const because = whyDriven(unit, twin);
  const damage = ({ damaged }: Moment) => (damaged.length === 0 ? 'none' : damaged.join(', '));
  return [
    ...stateIf('coil', 'contactor’s coil', [unit.coil, twin.coil], because),
    ...stateIf('lock', 'lock’s motor', [unit.lock ?? 'none', twin.lock ?? 'none'], because),
    ...stateIf(
      'control',
      'standing in the control',
      [latchText(unit), latchText(twin)],
      'What is latched stays until what the unit’s sheet names clears it.',
    ),
    ...stateIf('control', 'the unit says', [unit.indicator, twin.indicator], because),
    ...stateIf('control', 'damage', [damage(unit), damage(twin)], 'A test voltage went where it should not.'),
  ];
}

function whyDriven(unit: Moment, twin: Moment): string {
  if (unit.pilot.band !== twin.pilot.band)
    return `This control takes the pilot for ${bandText(unit)}, the twin’s for ${bandText(twin)}.`;
  if (latchText(unit) !== latchText(twin))
    return `Standing in this control: ${latchText(unit)}; in the twin’s: ${latchText(twin)}.`;
  return 'Both controls take the pilot for the same state: permission, a check or a time is other.';
}

const bandText = ({ pilot: { band } }: Moment): string =>
  band === null ? 'nothing, having no power' : `state ${band}`;

function pilotStates(unit: Moment, twin: Moment): readonly State[] {
  const [here, there] = [unit.pilot, twin.pilot];
  const levels = (place: Place, what: string, a: Halves, b: Halves, why: string) =>
    Math.abs(a.high - b.high) > PILOT_ALIKE || Math.abs(a.low - b.low) > PILOT_ALIKE
      ? stateIf(place, what, [levelsText(a), levelsText(b)], why)
      : [];
  return [
    ...stateIf(
      'control',
      'pilot',
      [driveText(unit), driveText(twin)],
      'What the control puts on the pilot follows from the state it takes the vehicle to be in.',
    ),
    ...(here.drive === there.drive
      ? stateIf(
          'control',
          'pilot high for',
          [shareOf(here.duty), shareOf(there.duty)],
          'The width of the high half is what offers current.',
        )
      : []),
    ...levels(
      'pilot.resistor',
      'pilot at the unit’s own terminal',
      here.atUnit,
      there.atUnit,
      'The source behind its resistor and what is joined from pilot to PE share the voltage between them.',
    ),
    ...levels(
      'pilot.outlet',
      'pilot at the outlet',
      here.atOutlet,
      there.atOutlet,
      'It is what the unit puts out, less what is lost on the way there and back through PE.',
    ),
  ];
}

const shareOf = (duty: number): string => `${(100 * duty).toFixed(1)}\u202f% of a period`;

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
      `${terminalWords(terminal)}, to true earth`,
      [potentialText(here), potentialText(there)],
      whyPotential(unit, terminal, here),
    );
  });

function whyPotential(unit: Moment, terminal: string, here: Potential): string {
  const [place, conductor] = terminal.split('.');
  const pole = place === 'outlet' ? unit.poles[conductor as Live] : undefined;
  if (here.hold === 'faint') return 'Only insulation, a filter or a bleed decides where it stands.';
  if (here.hold === 'none') {
    const open = pole === 'open' ? `The ${conductor} pole is open and holds nothing:` : 'Its path is open:';
    return here.tiedTo === null
      ? `${open} it follows whatever a lead joins it to.`
      : `${open} through the leads it follows ${terminalWords(here.tiedTo)}.`;
  }
  if (pole === 'closed') return `The closed ${conductor} pole joins it to the supply.`;
  if (pole === 'open')
    return `The ${conductor} pole is open, and something beside it still ties this conductor.`;
  if (conductor === 'PE' || place === 'case' || place === 'met')
    return 'Its path to earth is other here than in the twin.';
  return 'What the circuit brings to it is other here than in the twin.';
}
