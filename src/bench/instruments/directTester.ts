/**
 * The two testers that put a d.c. source on the leads: continuity at a few volts and 200 mA, insulation at up to
 * 1000 V and about a milliampere. Linear sources; the network's one-way parts (arrester, diode) answer for themselves.
 */
import type { Ohms, Volts } from '../../laws/quantities.ts';
import type { Driven } from '../../network/port.ts';
import { drive } from '../../network/port.ts';
import type { Leads } from '../port.ts';
import { isLive, loadedVolts, modulus, seenBy } from '../port.ts';
import type { Details, Truth } from '../reading.ts';
import type { Refusal } from '../refusal.ts';

/** Open 5 V, 0.25 A into a short: within 4–24 V and at least 0.2 A of IEC 61557-4. */
const CONTINUITY = { open: 5, resistance: 20 } as const;
/** 1.1 times nominal behind 100 Ω per nominal volt: 1 mA at nominal into 1 kΩ/V, 11 mA into a short (IEC 61557-2, from memory: at least 1 mA, at most 15 mA, at most 1.25 Un open). */
const INSULATION = { overNominal: 1.1, ohmsPerVolt: 100 } as const;

/** The d.c. network with an insulation tester of this nominal voltage on the leads. */
export const drivenBy = ({ solution, port }: Leads, nominal: Volts): Driven =>
  drive(solution.reduced, solution.emfs, solution.oneWays, solution.injections, port, {
    open: nominal * INSULATION.overNominal,
    resistance: nominal * INSULATION.ohmsPerVolt,
  });

const resistanceSeen = (leads: Leads, open: Volts, internal: Ohms): Ohms => {
  const { reduced, emfs, oneWays, injections } = leads.solution;
  const { volts, amps } = drive(reduced, emfs, oneWays, injections, leads.port, {
    open,
    resistance: internal,
  });
  return amps <= 0 ? Infinity : Math.max(0, volts / amps);
};

/** Both testers refuse on live parts: their fuse opens, and they say what they met. */
const refusal = (leads: Leads): Refusal | null => {
  const seen = seenBy(leads);
  return isLive(seen) || modulus(seen.open.mains) > 50
    ? { id: 'voltage-on-leads', volts: Math.round(loadedVolts(seen, 100_000)) }
    : null;
};

/** A pair of leads that was not nulled, Ω. Common practice, no source: 0.05 to 0.10 Ω a pair. */
const LEADS: Ohms = 0.08;

export function continuity(leads: Leads, nulled: boolean, details: Details): Truth {
  const refused = refusal(leads);
  if (refused !== null) return { quantity: 'continuity', refused, details };
  return {
    quantity: 'continuity',
    value: resistanceSeen(leads, CONTINUITY.open, CONTINUITY.resistance) + (nulled ? 0 : LEADS),
    details,
  };
}

/** A coding resistor is read by the same source, on the range up to 20 kΩ. */
export function coding(leads: Leads, details: Details): Truth {
  return {
    quantity: 'coding',
    value: resistanceSeen(leads, CONTINUITY.open, CONTINUITY.resistance),
    details,
  };
}

export function insulation(leads: Leads, nominal: Volts, details: Details): Truth {
  const refused = refusal(leads);
  if (refused !== null) return { quantity: 'insulation', refused, details };
  const { volts, amps } = drivenBy(leads, nominal);
  return { quantity: 'insulation', value: amps <= 0 ? Infinity : Math.max(0, volts / amps), details };
}
