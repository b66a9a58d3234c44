/**
 * Operations, terminals and instruments in the trade's words, for buttons, logs and the line that repeats where the
 * leads are. It says what the trainee set, never what should have been set.
 */

import type { Operation } from '../bench/operation.ts';
import type { Terminal } from '../bench/terminals.ts';
import type { DetectorProof } from '../bench/usual.ts';
import { putRightText } from './puttingRight.ts';
import { applyText } from './readings.ts';
import { DISTURBANCE_WORDS, VEHICLE_WORDS } from './settings.ts';
import { betweenText, conductorOf, PLACE_WORDS, placeOf, probeText, SINGLE_WORDS } from './terminals.ts';

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
      return putRightText(operation.what);
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
