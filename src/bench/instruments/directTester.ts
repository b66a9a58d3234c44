/**
 * The two testers that put a d.c. source on the leads: continuity at a few volts and 200 mA, insulation at up to
 * 1000 V and about a milliampere. Linear sources; the network's one-way parts (arrester, diode) answer for themselves.
 */
import type { Tester } from '../../faults/tester.ts';
import type { Amps, Ohms, Volts } from '../../laws/quantities.ts';
import type { Driven } from '../../network/port.ts';
import { drive } from '../../network/port.ts';
import { OPEN } from '../../site/part.ts';
import type { Leads } from '../port.ts';
import { isLive, loadedVolts, modulus, seenBy } from '../port.ts';
import type { Truth } from '../reading.ts';
import type { FieldsOf } from '../readings/quantity.ts';
import type { Refusal } from '../refusal.ts';

/** Open 5 V, 0.25 A into a short: within 4–24 V and at least 0.2 A of IEC 61557-4. */
const CONTINUITY = { open: 5, resistance: 20 } as const;
/** 1.1 times nominal behind 100 Ω per nominal volt: 1 mA at nominal into 1 kΩ/V, 11 mA into a short (IEC 61557-2, from memory: at least 1 mA, at most 15 mA, at most 1.25 Un open). */
const INSULATION = { overNominal: 1.1, ohmsPerVolt: 100 } as const;

/** The d.c. network with an insulation tester of this nominal voltage on the leads. */
export const drivenBy = ({ solution, port }: Leads, nominal: Volts, { battery, lead }: Tester): Driven =>
  drive(solution.reduced, solution.emfs, solution.oneWays, solution.injections, port, {
    open: nominal * INSULATION.overNominal * battery,
    resistance: nominal * INSULATION.ohmsPerVolt + lead,
  });

/** What a tester makes of this resistance at its sockets. */
const scaled = (ohms: Ohms, { gain }: Tester): Ohms => gain * ohms;

/** What lies between the leads, and in them beyond a sound pair. */
const resistanceSeen = (leads: Leads, { battery, lead }: Tester): Ohms => {
  const { reduced, emfs, oneWays, injections } = leads.solution;
  const { volts, amps } = drive(reduced, emfs, oneWays, injections, leads.port, {
    open: CONTINUITY.open * battery,
    resistance: CONTINUITY.resistance + lead,
  });
  return amps <= 0 ? Infinity : Math.max(0, volts / amps) + lead;
};

/** Least current into a short that a continuity reading is taken with, A (IEC 61557-4). */
const LEAST_SHORT: Amps = 0.2;

/** A tester watches its own source, and takes no reading with less than it is made for. */
const isLow = ({ battery }: Tester): boolean =>
  (CONTINUITY.open * battery) / CONTINUITY.resistance < LEAST_SHORT || INSULATION.overNominal * battery < 1;

/** A flat battery is said; on live parts their fuse opens, and they say what they met. Through a broken lead they meet nothing. */
const refusal = (leads: Leads, tester: Tester): Refusal | null => {
  if (isLow(tester)) return { id: 'battery-low' };
  if (tester.lead >= OPEN) return null;
  const seen = seenBy(leads);
  return isLive(seen) || modulus(seen.open.mains) > 50
    ? { id: 'voltage-on-leads', volts: Math.round(loadedVolts(seen, 100_000)) }
    : null;
};

/** A pair of leads that was not nulled, Ω. Common practice, no source: 0.05 to 0.10 Ω a pair. */
const LEADS: Ohms = 0.08;
const leadsLeft = (nulled: boolean, { nulls }: Tester): Ohms => (nulled && nulls ? 0 : LEADS);

export function continuity(
  leads: Leads,
  nulled: boolean,
  tester: Tester,
  details: FieldsOf<'continuity'>,
): Truth {
  const refused = refusal(leads, tester);
  if (refused !== null) return { quantity: 'continuity', refused, details };
  const value = scaled(resistanceSeen(leads, tester) + leadsLeft(nulled, tester), tester);
  return { quantity: 'continuity', value, details };
}

/** A coding resistor is read by the same source, on the range up to 20 kΩ. */
export function coding(leads: Leads, tester: Tester, details: FieldsOf<'coding'>): Truth {
  if (isLow(tester)) return { quantity: 'coding', refused: { id: 'battery-low' }, details };
  return { quantity: 'coding', value: scaled(resistanceSeen(leads, tester), tester), details };
}

export function insulation(
  leads: Leads,
  nominal: Volts,
  tester: Tester,
  details: FieldsOf<'insulation'>,
): Truth {
  const refused = refusal(leads, tester);
  if (refused !== null) return { quantity: 'insulation', refused, details };
  const { volts, amps } = drivenBy(leads, nominal, tester);
  const ohms = amps <= 0 ? Infinity : Math.max(0, volts / amps) + tester.lead;
  return { quantity: 'insulation', value: scaled(ohms, tester), details };
}

/** A known resistor that is carried with the tester, Ω (IET Guidance Note 3, from memory; its value common practice, no source). */
export const KNOWN_RESISTOR: Ohms = 1;

/**
 * The tester on its known resistor: on nothing of the installation, so that what it reads is its own. All of its ranges
 * go by one scale, so that one resistor tells of them all: a design choice.
 */
export function onKnownResistor(nulled: boolean, tester: Tester): Truth {
  const frame = { quantity: 'continuity', details: { between: ['leads', 'known-ohm'] } } as const;
  if (isLow(tester)) return { ...frame, refused: { id: 'battery-low' } };
  return { ...frame, value: scaled(KNOWN_RESISTOR + tester.lead + leadsLeft(nulled, tester), tester) };
}
