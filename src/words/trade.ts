/**
 * Operations, terminals and instruments in the trade's words, for buttons, logs and the line that repeats where the
 * leads are. It says what the trainee set, never what should have been set.
 */
import type { DetectorProof, Measurement, Operation } from '../bench/operation.ts';
import type { Quantity, Reading } from '../bench/reading.ts';
import type { Probe, Terminal } from '../bench/terminals.ts';
import { terminalsIn } from '../bench/terminals.ts';
import { causeTitle } from './causeTitles.ts';
import { DISTURBANCE_WORDS, VEHICLE_WORDS } from './settings.ts';
import { conductorOf, fromLabel, PLACE_WORDS, placeOf, probeText, SINGLE_WORDS } from './terminals.ts';

const NAMED_PLACES: Readonly<Record<string, string>> = {
  incoming: 'live side',
  met: 'MET',
  house: 'house earth',
};

/** Short, for a terminal on a drawing: `outlet L1`. */
export function terminalName(terminal: Terminal): string {
  const [place = '', conductor] = terminal.split('.');
  const at = NAMED_PLACES[place] ?? SINGLE_WORDS[place] ?? place;
  return conductor === undefined ? at : `${at} ${conductor}`;
}

/** Short: `L1–PE at the outlet`, or both ends in full where they are at different places. */
export function betweenText(a: Probe, b: Probe): string {
  const place = placeOf([...terminalsIn(a), ...terminalsIn(b)]);
  const joined = (probe: Probe) => terminalsIn(probe).map(conductorOf).join(' + ');
  return place === null
    ? `${probeText(a)} – ${probeText(b)}`
    : `${joined(a)}–${joined(b)} at the ${PLACE_WORDS[place] ?? place}`;
}

/** Where the leads of a measurement in hand are, as far as they are on anything. */
export function leadsWords(leads: readonly (readonly Terminal[])[]): string {
  const [a, b, ...more] = leads;
  if (a === undefined) return '';
  if (b === undefined) return probeText(a);
  if (more.length === 0) return betweenText(a, b);
  const place = placeOf(leads.flat());
  return place === null
    ? 'the earth electrode and two stakes'
    : `${leads.map((ends) => ends.map(conductorOf).join(' + ')).join(', ')} at the ${PLACE_WORDS[place] ?? place}`;
}

export const leadsText = ({ between }: Reading): string | null =>
  between === undefined ? null : betweenText(fromLabel(between[0]), fromLabel(between[1]));

/** The two conductors of a pair at one place, and that place. */
export const pairText = ({ between }: Reading): string => (between ?? []).map(conductorOf).join('–');
export const placeText = (reading: Reading | undefined): string =>
  PLACE_WORDS[reading?.between?.[0].split('.')[0] ?? ''] ?? '';

export const INSTRUMENTS: Readonly<Record<Quantity, string>> = {
  continuity: 'continuity',
  insulation: 'insulation resistance',
  voltage: 'voltage',
  pilot: 'pilot against time',
  coding: 'proximity coding',
  loop: 'loop',
  residual: 'residual current',
  'opening-time': 'opening time',
  electrode: 'earth electrode, three stakes',
  'phase-sequence': 'order of the lines',
};

export const WAVEFORM_WORDS = {
  sinusoidal: 'a.c.',
  'half-wave-positive': 'half-wave, positive',
  'half-wave-negative': 'half-wave, negative',
  'smooth-dc-positive': 'smooth d.c., positive',
  'smooth-dc-negative': 'smooth d.c., negative',
} as const;

export const OPENING_WORDS = {
  'C-to-B': 'from C to B',
  'C-to-A': 'from C to A',
  unplug: 'from unplugging',
  'pilot-short': 'from CP shorted to PE',
  'pilot-open': 'from CP open',
  'earth-open': 'from PE open at the stand-in',
  'proximity-lost': 'from PP open at the plug',
} as const;

/** What a reading is of, for the head of its entry: instrument, setting, leads. */
export function readingTitle(reading: Reading): string {
  const leads = leadsText(reading);
  switch (reading.quantity) {
    case 'residual': {
      const { line = '', waveform = 'sinusoidal', mode, place = 'outlet' } = reading;
      const wave = WAVEFORM_WORDS[waveform as keyof typeof WAVEFORM_WORDS] ?? waveform;
      return `residual current, ${wave}, ${mode === 'ramp' ? 'rising' : 'fixed'}, ${line}–PE at the ${PLACE_WORDS[place] ?? place}`;
    }
    case 'opening-time':
      return `opening time, ${OPENING_WORDS[(reading.of ?? 'C-to-B') as keyof typeof OPENING_WORDS] ?? ''}`;
    case 'pilot':
      return 'pilot against time, CP–PE at the outlet';
    case 'electrode':
      return 'earth electrode, three stakes';
    case 'phase-sequence':
      return `order of the lines at the ${PLACE_WORDS[reading.place ?? 'outlet'] ?? ''}`;
    case 'insulation':
      return `insulation, ${reading.volts ?? ''} V, ${leads ?? ''}`;
    case 'loop':
      return `loop, ${reading.current === 'full' ? 'full' : 'low'} current, ${leads ?? ''}`;
    case 'voltage':
      return `${reading.tool === 'meter' ? 'meter' : 'two-pole detector'}, ${leads ?? ''}`;
    default:
      return `${INSTRUMENTS[reading.quantity]}, ${leads ?? ''}`;
  }
}

/** The verb with its object that stands on the button: what goes where. */
export const applyText = (m: Measurement): string => `${appliedText(m)}${whereText(m)}`;

/** On a button, under the line that names both leads: where they are at two places, they are not named once more. */
export const applyKey = (m: Measurement): string => {
  const isApart =
    'between' in m && m.between !== undefined && placeOf(m.between.flatMap(terminalsIn)) === null;
  return `${appliedText(m)}${isApart ? '' : whereText(m)}`;
};

function appliedText(m: Measurement): string {
  switch (m.quantity) {
    case 'insulation':
      return `Apply ${m.volts} V`;
    case 'continuity':
      return 'Apply the continuity tester';
    case 'voltage':
      return `Apply the ${m.tool === 'meter' ? 'meter' : 'detector'}`;
    case 'loop':
      return 'Apply the loop test';
    case 'pilot':
      return 'Apply the pilot instrument';
    case 'coding':
      return 'Apply the ohmmeter';
    case 'electrode':
      return 'Apply the electrode test';
    case 'phase-sequence':
      return 'Apply the sequence test';
    case 'residual':
      return `Apply ${residualText(m)}`;
    case 'opening-time':
      return 'Apply the change';
  }
}

function whereText(m: Measurement): string {
  switch (m.quantity) {
    case 'insulation':
    case 'continuity':
    case 'voltage':
    case 'loop':
      return ` ${betweenText(...m.between)}`;
    case 'pilot':
      return ' CP–PE at the outlet';
    case 'coding':
      return ' PP–PE at the outlet';
    case 'electrode':
      return ', electrode to stakes';
    case 'phase-sequence':
      return ` L1 L2 L3 at the ${PLACE_WORDS[m.at]}`;
    case 'residual':
      return ` ${m.line}–PE at the ${PLACE_WORDS[m.at] ?? m.at}`;
    case 'opening-time':
      return ` ${OPENING_WORDS[m.of]}`;
  }
}

function residualText(m: Extract<Measurement, { quantity: 'residual' }>): string {
  const wave = WAVEFORM_WORDS[m.waveform];
  if (m.mode === 'ramp') return `rising ${wave}`;
  return `${m.amps === undefined ? 'the rated current' : `${Number((1000 * m.amps).toPrecision(6))} mA`}, ${wave},`;
}

export const STATE_WORDS = {
  A: 'A: no vehicle',
  B: 'B: connected, 2.74 kΩ',
  C: 'C: asks, 1.3 kΩ added',
  D: 'D: asks with ventilation, 270 Ω added',
} as const;

/** What was done, for the log. */
export function operationText(operation: Operation): string {
  switch (operation.op) {
    case 'isolate':
      if (operation.at === 'main-switch')
        return `main switch off, whole installation${operation.lock ? ', locked' : ', not locked'}`;
      return `isolated at the origin, ${operation.poles === 'all' ? 'all poles' : 'line poles only'}${operation.lock ? ', locked' : ', not locked'}`;
    case 'energise':
      return operation.at === undefined ? 'energised' : ENERGISED_WORDS[operation.at];
    case 'open-cover':
      return 'cover opened';
    case 'close-cover':
      return 'cover closed';
    case 'check-instruments':
      return `instruments checked${operation.known === true ? ', tester on its known resistor' : ''}`;
    case 'discharge':
      return 'waited for stored energy to go';
    case 'null-leads':
      return operation.on ? 'leads nulled' : 'leads not nulled';
    case 'prove-dead':
      return `proved dead at the ${PLACE_WORDS[operation.at]}, ${operation.tool === 'meter' ? 'meter' : `two-pole detector${PROOF_DONE[operation.proof]}`}`;
    case 'disconnect':
      return `${REMOVABLE_WORDS[operation.what]} taken off`;
    case 'reconnect':
      return `${REMOVABLE_WORDS[operation.what]} connected`;
    case 'put-right':
      return `put right: ${causeTitle(operation.what)}`;
    case 'link':
      return `link put in, ${betweenText(...operation.between)}`;
    case 'unlink':
      return `link taken out, ${betweenText(...operation.between)}`;
    case 'vehicle':
      return `stand-in: ${Object.entries(operation)
        .filter(([name, value]) => name in VEHICLE_WORDS && value !== undefined)
        .map(([name, value]) => VEHICLE_WORDS[name]?.(value))
        .join(', ')}`;
    case 'wait':
      return `waited ${operation.seconds} s`;
    case 'pull-plug':
      return 'pulled the plug';
    case 'press':
      return `pressed: ${BUTTON_WORDS[operation.button]}`;
    case 'supply':
      return `disturbance: ${Object.entries(operation)
        .filter(([name, value]) => name in DISTURBANCE_WORDS && value !== undefined)
        .map(([name, value]) => DISTURBANCE_WORDS[name]?.(value))
        .join(', ')}`;
    case 'guard':
      return 'area guarded';
    case 'inspect':
      return 'looked over';
    case 'flex-cable':
      return operation.on ? 'bending the cable' : 'cable at rest';
    case 'reset':
      return `reset: ${RESET_WORDS[operation.what]}`;
    case 'stop':
      return `stopped: ${operation.why}`;
    case 'measure':
      return applyText(operation).replace(/^Apply/, 'applied');
  }
}

const ENERGISED_WORDS = {
  origin: 'energised at the origin',
  'main-switch': 'energised at the main switch',
} as const;

const PROOF_DONE: Readonly<Record<DetectorProof, string>> = {
  both: ' proved before and after',
  before: ' proved before, not after',
  none: ' not proved',
};

/** What is done when a place is tested for dead, by when the detector is tried on the proving unit. */
export const PROOF_WORDS: Readonly<Record<DetectorProof, string>> = {
  both: 'prove the detector, test, prove it again',
  before: 'prove the detector, then test',
  none: 'test without proving the detector',
};

export const BUTTON_WORDS = {
  authorise: 'authorise',
  'override-delay': 'override the delay',
  stop: 'stop',
  emergency: 'emergency stop',
  'residual-test': 'test button of the residual device',
} as const;

export const REMOVABLE_WORDS = {
  unit: 'unit’s conductors',
  arrester: 'surge arrester',
  'earthing-conductor': 'earthing conductor',
  electrode: 'earth electrode',
} as const;

export const RESET_WORDS = {
  unit: 'the unit, as its sheet says',
  supply: 'supply off 10 s and on',
  upstream: 'device at the origin',
} as const;

export const PLUG_WORDS: Readonly<Record<string, string>> = {
  out: 'plug out',
  free: 'plug in, free',
  held: 'plug in, held',
};
