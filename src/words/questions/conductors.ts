/** Words of the questions on conductors, earth and loops. */
import type { QuestionWords } from '../questionWords.ts';
import { num, str } from '../values.ts';

const two = (v: Parameters<typeof num>[0], key: string): string => num(v, key).toFixed(2);

export const conductors: Readonly<Record<string, QuestionWords>> = {
  'protective-ohms': {
    stem: (v) =>
      `A circuit’s protective conductor (PE) is ${num(v, 'length')} m of ${num(v, 'protective')} mm² copper (${num(v, 'each')} mΩ a metre at 20 °C). What should it read end to end, with the leads nulled?`,
    mistakes: {
      'there-and-back': 'That counts the length twice. The long lead brings you back, and it was nulled.',
      'thousand-out': 'That is ten times too little: check the milliohms.',
      'line-as-well': 'That is line and PE together, R1 + R2. Here PE alone is between the leads.',
    },
    working: (v, answer) => [`${num(v, 'length')} m × ${num(v, 'each')} mΩ/m = ${answer}`],
    why: 'Copper’s resistance follows from length and area alone. A reading well above that is a bad joint or a thinner conductor, and fault current meets it too.',
  },
  'line-and-protective': {
    stem: (v) =>
      `A circuit is ${num(v, 'length')} m long: line ${num(v, 'line')} mm² (${num(v, 'lineEach')} mΩ a metre), PE ${num(v, 'protective')} mm² (${num(v, 'protectiveEach')} mΩ a metre). Line and PE are linked at the origin. What should R1 + R2 read at the far end?`,
    mistakes: {
      'one-way': 'That is the line alone. The link sends the current back through PE.',
      'line-twice': 'That takes PE for as thick as the line.',
      'in-parallel': 'That puts line and PE in parallel. Through the link they are in series.',
    },
    working: (v, answer) => [
      `R1: ${num(v, 'length')} m × ${num(v, 'lineEach')} mΩ/m. R2: ${num(v, 'length')} m × ${num(v, 'protectiveEach')} mΩ/m.`,
      `R1 + R2 = ${answer}`,
    ],
    why: 'This is the path that a line-to-earth fault takes through the circuit. Added to the supply’s own loop it decides whether the breaker trips in time.',
  },
  'sum-judged': {
    stem: (v) =>
      `By its papers R1 + R2 of a circuit comes to ${two(v, 'sum')} Ω (${num(v, 'length')} m, ${num(v, 'line')} and ${num(v, 'protective')} mm²), and contacts add at most ${two(v, 'contacts')} Ω. You read ${two(v, 'read')} Ω. What do you make of it?`,
    choices: {
      'as-it-ought': 'as it ought to be',
      'too-high': 'too high: a joint, or less copper than on paper',
      'too-low': 'too low: another path lies beside it',
    },
    working: (v) => [
      `Expected: ${two(v, 'sum')} to ${(num(v, 'sum') + num(v, 'contacts')).toFixed(2)} Ω; read: ${two(v, 'read')} Ω.`,
    ],
    why: 'A bad joint adds ohms, and heats under load. A path beside the conductor takes ohms away: you then measured more than the circuit, and its own conductor may even be open.',
  },
  'electrode-limit': {
    stem: (v) =>
      `A TT installation is protected by a ${num(v, 'milliamps')} mA residual device. What is the greatest resistance of electrode and protective conductor together?`,
    mistakes: {
      'mains-voltage': 'That takes 230 V. The earth may rise to 50 V, no further.',
      'milliamps-for-amps': 'That takes milliamperes for amperes.',
      'times-not-over': 'That multiplies. Ohms are volts divided by amperes.',
    },
    working: (v, answer) => [`50 V ÷ ${num(v, 'milliamps') / 1000} A = ${answer}`],
    why: 'A leakage just below the device’s rating may flow for ever. Through this resistance it lifts everything earthed to 50 V, and a person touches that. Above 200 Ω an electrode may not be stable besides.',
  },
  'electrode-touch': {
    stem: (v) =>
      `An electrode and its conductor have ${num(v, 'ohms')} Ω. ${num(v, 'milliamps')} mA leak to earth. To what voltage does the earthed metal rise?`,
    mistakes: {
      'milliamps-for-amps': 'That takes milliamperes for amperes.',
      'over-not-times': 'That divides. Volts are ohms times amperes.',
      'mains-voltage':
        'That is the whole supply: it would drop there only with no other resistance in the loop.',
    },
    working: (v, answer) => [`${num(v, 'ohms')} Ω × ${num(v, 'milliamps') / 1000} A = ${answer}`],
    why: 'What leaks flows through the electrode and drops there. All metal that is joined to this earth has that voltage against the ground on which a person stands.',
  },
  'loop-of-parts': {
    stem: (v) =>
      `Ze is ${two(v, 'external')} Ω, R1 + R2 of the circuit ${two(v, 'fixed')} Ω, line and PE of the tether together ${two(v, 'tether')} Ω. What should the loop read at the connector?`,
    mistakes: {
      'tether-forgotten': 'That leaves out the tether: line and PE of it lie in the loop too.',
      'external-forgotten': 'That leaves out the supply’s part, Ze.',
      'external-halved': 'That halves Ze. Ze is the whole loop outside, there and back.',
      'taken-off': 'That takes Ze off. You would do that to find R1 + R2 from a loop reading.',
    },
    working: (v, answer) => [`${two(v, 'external')} + ${two(v, 'fixed')} + ${two(v, 'tether')} = ${answer}`],
    why: 'Fault current flows from the transformer through line, fault and PE back to the transformer. Every part of that way adds up.',
  },
  'loop-limit': {
    stem: (v) =>
      `A ${str(v, 'type')}${num(v, 'rating')} breaker has to clear an earth fault at a charge point. What is the highest loop impedance that you may measure there, with the conductors cold?`,
    mistakes: {
      'hot-for-cold':
        'That is the limit for warm conductors. Cold ones have less resistance: 0.8 of it counts.',
      'no-factor': 'That leaves out the lowest supply (0.95) and the warm conductors (0.8).',
      'other-type':
        'That is the other type of breaker. B trips at once at 5 times, C at 10 times its rating.',
      'rating-alone': 'That lets the rating flow, at which no breaker trips at once.',
    },
    working: (v, answer) => [
      `230 V × 0.95 ÷ (${num(v, 'multiple')} × ${num(v, 'rating')} A) = ${two(v, 'tabled')} Ω, warm`,
      `× 0.8 = ${answer}`,
    ],
    why: 'Only a current of that many times the rating opens the breaker at once. With a larger loop less flows, and the fault stands for seconds or minutes with everything earthed at a dangerous voltage.',
  },
  'loop-judged': {
    stem: (v) =>
      `Behind a ${str(v, 'type')}${num(v, 'rating')} breaker the loop may read ${two(v, 'limit')} Ω cold. You read ${two(v, 'read')} Ω ± ${two(v, 'uncertainty')} Ω. How do you judge that?`,
    choices: { within: 'within', outside: 'outside', 'too-close': 'too close to call' },
    working: (v) => [
      `The true value lies between ${(num(v, 'read') - num(v, 'uncertainty')).toFixed(2)} and ${(num(v, 'read') + num(v, 'uncertainty')).toFixed(2)} Ω; the limit is ${two(v, 'limit')} Ω.`,
    ],
    why: 'An instrument shows a band, not a point. Where the band spans the limit, the reading cannot decide: measure more finely, or find out by the parts.',
  },
  'prospective-current': {
    stem: (v) =>
      `The loop at the origin is ${two(v, 'ohms')} Ω. How large is the prospective fault current at ${num(v, 'volts')} V?`,
    mistakes: {
      'times-not-over': 'That multiplies. Amperes are volts divided by ohms.',
      'line-to-line': 'That takes 400 V. The loop of line and earth is driven by 230 V.',
      'upside-down': 'That is ohms over volts. Amperes are volts divided by ohms.',
    },
    working: (v, answer) => [`${num(v, 'volts')} V ÷ ${two(v, 'ohms')} Ω = ${answer}`],
    why: 'That much flows in a dead short at this place. Every device here has to interrupt it without bursting.',
  },
  'prospective-three-phases': {
    stem: (v) =>
      `Between one line and neutral the prospective current is ${num(v, 'single')} A. What do you take for a fault of all three lines?`,
    mistakes: {
      'as-single': 'With three lines the neutral is not in the way, so more flows.',
      'three-times': 'Three lines do not add up in each of them. In each flows what its own voltage drives.',
      'root-three': 'That is two lines against each other. All three together drive more.',
    },
    working: (v, answer) => [`2 × ${num(v, 'single')} A = ${answer}`],
    why: 'In a balanced fault no current needs the neutral’s way back, so each line meets only about half the loop. Doubling errs on the safe side.',
  },
  'breaking-capacity': {
    stem: (v) =>
      `At the board the loop is ${two(v, 'ohms')} Ω. The breaker’s breaking capacity is ${num(v, 'capacity') / 1000} kA. Can it interrupt a dead short here?`,
    choices: { 'bears-it': 'yes, it can', 'does-not': 'no, it cannot' },
    working: (v) => [
      `230 V ÷ ${two(v, 'ohms')} Ω = ${num(v, 'amps')} A, against ${num(v, 'capacity') / 1000} kA.`,
    ],
    why: 'A breaker that has to interrupt more than it is made for may weld, burn or burst.',
  },
  'supply-voltage': {
    stem: (v) => `You read ${num(v, 'volts')} V from line to neutral at the origin. How do you judge that?`,
    choices: { low: 'too low', within: 'in order', high: 'too high' },
    working: () => ['230 V − 6 % = 216.2 V; 230 V + 10 % = 253 V.'],
    why: 'Outside that range the distributor has to see to it. Too low hints at a bad joint or an overloaded service, too high at a broken neutral.',
  },
  'volt-drop': {
    stem: (v) =>
      `A single-phase circuit of ${num(v, 'length')} m in ${num(v, 'area')} mm² (tabled: ${num(v, 'each')} mV an ampere and metre) carries ${num(v, 'amps')} A. How many volts are lost in it?`,
    mistakes: {
      'length-forgotten': 'That is the loss of one metre.',
      'there-and-back': 'That counts both ways again. The tabled figure already has line and neutral in it.',
      'as-percent': 'That is per cent of 230 V. Volts were asked.',
    },
    working: (v, answer) => [
      `${num(v, 'length')} m × ${num(v, 'amps')} A × ${num(v, 'each')} mV ÷ 1000 = ${answer}; at most ${num(v, 'most')} V.`,
    ],
    why: 'The volts lost heat the cable. A car charges for hours, so a long thin run shows in the bill and in the temperature.',
  },
  'loop-beside-its-sum': {
    stem: (v) =>
      `Ze is ${two(v, 'external')} Ω and R1 + R2 ${two(v, 'fixed')} Ω. With everything connected, you read ${two(v, 'read')} Ω as the loop. What is most likely?`,
    choices: {
      'as-it-ought': 'it is as it ought to be',
      'parallel-path': 'bonded metal lies beside PE',
      joint: 'a joint has come loose',
      warm: 'the conductors are warm from charging',
    },
    working: (v) => [
      `${two(v, 'external')} + ${two(v, 'fixed')} = ${two(v, 'sum')} Ω, and you read ${two(v, 'read')} Ω.`,
      `Conductors at 70 °C have about a fifth more resistance: of R1 + R2 that is ${(0.2 * num(v, 'fixed')).toFixed(2)} Ω, no more.`,
    ],
    why: 'Ze was measured with the earthing conductor off, the loop with everything joined. Pipes and rods may then carry part of the current, so a low loop does not prove that PE is whole. A bad joint adds ohms that no table has.',
  },
};
