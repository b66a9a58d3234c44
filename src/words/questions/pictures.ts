/** Words of the questions that are answered on a picture. */
import type { QuestionWords } from '../questionWords.ts';
import { str } from '../values.ts';

const TRACE: Readonly<Record<string, string>> = {
  'plugs-in': 'the plug goes in',
  asks: 'the vehicle asks for power',
  'stops-asking': 'the vehicle stops asking for power',
  unplugs: 'the plug comes out',
  'pilot-to-earth': 'the pilot is shorted to PE',
  'comes-back': 'the short is gone',
  'pilot-broken': 'the pilot conductor breaks',
};

/** What the peak does then, V. */
const CHANGES: Readonly<Record<string, string>> = {
  'plugs-in': 'from 12 to 9 V',
  asks: 'from 9 to 6 V',
  'stops-asking': 'from 6 back to 9 V',
  unplugs: 'from 9 to 12 V',
  'pilot-to-earth': 'from 6 to 0 V',
  'pilot-broken': 'from 9 to 12 V, as without a vehicle',
};

const LEVELS = 'A, no vehicle: 12 V. B, connected: 9 V. C, asks: 6 V. Shorted to PE: 0 V.';

const LEADS: Readonly<Record<string, { readonly asks: string; readonly why: string }>> = {
  'line-against-earth': {
    asks: 'Nothing is plugged in. Put the leads where they show a line contact that is stuck closed, even if the neutral contact is open.',
    why: 'PE is at earth whatever the unit does, so a live line shows against it. With the neutral open, the pair line to neutral reads 0 V though the line is live.',
  },
  'neutral-against-earth': {
    asks: 'Line to neutral and line to PE read 0 V. Put the leads on the pair that is left to be proved dead.',
    why: 'A neutral can be live too: crossed with a line, or lifted by a broken supply neutral. Only the pair neutral to PE shows that.',
  },
  pilot: {
    asks: 'Put the leads where the control pilot is read.',
    why: 'The pilot’s source drives a current out of CP, through the vehicle, and back by PE. So its voltage is between CP and PE.',
  },
  coding: {
    asks: 'Put the leads where the coding of the cable is read.',
    why: 'The coding resistor sits in the plug between proximity (PP) and PE.',
  },
  loop: {
    asks: 'Put the leads where you find out whether an earth fault on a line would trip the breaker.',
    why: 'An earth fault drives its current through a line and back by PE. The loop of line and neutral may be good while PE is broken.',
  },
  'neutral-insulation': {
    asks: 'Line to PE has good insulation. Put the leads where you find out whether the neutral leaks to earth.',
    why: 'A leak from neutral to PE carries no current while both are at the same potential. It trips the residual device as soon as load current flows, so it has to be found dead.',
  },
  'line-insulation': {
    asks: 'Put the leads where you find out whether a line leaks to earth.',
    why: 'A leak from line to PE lets current flow to earth all the time, and warms where it flows.',
  },
  'sum-of-line-and-earth': {
    asks: 'Line and PE are linked at the origin, all is dead. Put the leads where R1 + R2 is read.',
    why: 'Through the link the test current goes out by the line and comes back by PE, so the reading is the sum of both.',
  },
};

const PLACES: Readonly<Record<string, { readonly asks: string; readonly why: string }>> = {
  'body-earth': {
    asks: 'A fault in the vehicle makes its body live. Touch the terminal through which that current goes back.',
    why: 'The vehicle’s body is joined to PE. If that way is open, nobody’s breaker trips, and whoever touches the body is the way back.',
  },
  'neutral-return': {
    asks: 'A vehicle charges on one phase. Touch the terminal through which its load current comes back.',
    why: 'Load current goes out by the line and comes back by the neutral. PE carries current only when something is wrong.',
  },
  'asks-for-power': {
    asks: 'Touch the terminal on which the vehicle asks for power.',
    why: 'The vehicle closes a second resistor from the pilot (CP) to PE, and the positive peak falls from 9 to 6 V.',
  },
  'tells-the-cable': {
    asks: 'Touch the terminal whose resistor to PE tells what the cable carries.',
    why: 'Proximity (PP) has the coding resistor to PE in the plug. The control pilot tells of the vehicle, not of the cable.',
  },
  'neutral-floats-up': {
    asks: 'The line contact is stuck closed, the neutral contact is open. Touch the terminal that makes the pair with the line read 0 V.',
    why: 'With its contact open, the neutral is held by nothing but the stand-in or the electronics, and floats up to the line. So no voltage stands between the two.',
  },
};

/** What somebody had who took another pair. */
const PAIRS: Readonly<Record<string, string>> = {
  'line-neutral': 'That pair leaves PE out.',
  'neutral-earth': 'That pair has no line in it.',
  'line-earth': 'That pair has no neutral in it.',
  'pilot-neutral': 'The neutral is no part of the pilot’s circuit, and may be open.',
  'proximity-neutral': 'The coding resistor goes to PE, not to the neutral.',
  proximity: 'Proximity (PP) tells of the cable. The pilot is CP.',
  pilot: 'CP is the control pilot: it tells of the vehicle.',
};

const TERMINALS: Readonly<Record<string, string>> = {
  neutral: 'The neutral carries load current. It is not joined to the body.',
  line: 'That is the line itself.',
  earth: 'PE carries no load current, and stays at earth.',
  pilot: 'CP is the control pilot, between vehicle and unit.',
  proximity: 'PP tells what the cable carries.',
};

const trace: QuestionWords = {
  stem: (v) => `Touch the moment when ${TRACE[str(v, 'what')]}.`,
  mistakes: Object.fromEntries(Object.entries(TRACE).map(([id, text]) => [id, `That is when ${text}.`])),
  working: (v, answer) => [LEVELS, `At ${answer} the peak goes ${CHANGES[str(v, 'what')]}.`],
  why: 'The vehicle’s resistors pull the positive peak down through the unit’s 1 kΩ, so each step of the peak is somebody’s act, or a fault.',
};

export const pictures: Readonly<Record<string, QuestionWords>> = {
  'trace-of-a-charge': trace,
  'trace-of-a-fault': trace,
  'put-leads': {
    stem: (v) => LEADS[str(v, 'what')]?.asks ?? '',
    mistakes: PAIRS,
    working: () => [],
    why: (v) => LEADS[str(v, 'what')]?.why ?? '',
  },
  'touch-the-place': {
    stem: (v) => PLACES[str(v, 'what')]?.asks ?? '',
    mistakes: TERMINALS,
    working: () => [],
    why: (v) => PLACES[str(v, 'what')]?.why ?? '',
  },
};
