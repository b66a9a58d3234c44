/**
 * Figures of questions that are figures of a circuit, by an outside circuit simulator: each circuit is drawn by hand
 * here from what the question states, and shares nothing with the laws that made its answer. Two dozen questions a kind.
 */
import { afterAll, expect, test } from 'vitest';
import { question } from '../../src/quiz/draw.ts';
import { KINDS } from '../../src/quiz/kinds.ts';
import type { Question } from '../../src/quiz/question.ts';
import { freshMarker, simulate } from './circuitSimulator.ts';

const SEEDS = 24;
let held = 0;
afterAll(() => {
  console.log(`${held} figures of questions held to the circuit simulator`);
  expect(held).toBeGreaterThanOrEqual(300);
});

/** Potentials of the nodes `a`, `b`, … of hand-written lines, V; at 50 Hz by their size, else steady. */
async function volts(
  lines: readonly string[],
  nodes: readonly string[],
  how: 'steady' | '50 Hz' = 'steady',
): Promise<readonly number[]> {
  const fresh = freshMarker();
  const text = [
    `question ${fresh}`,
    `Vfresh fresh 0 dc ${fresh} ac ${fresh} 0`,
    ...lines,
    how === 'steady' ? '.op' : '.ac lin 1 50 50',
    '.end',
  ].join('\n');
  const { re, im } = await simulate({ text, fresh, vectors: nodes.map((node) => `v(${node})`) });
  return Array.from(re, (part, i) => (how === 'steady' ? part : Math.hypot(part, im[i] ?? 0)));
}

/** Drops 0.7 V at 1 mA or so: a silicon diode and nothing else. */
const DIODE = '.model silicon D(is=1e-14 n=1)';

interface Pilot {
  readonly open: number;
  readonly source: number;
  readonly vehicle: number;
  readonly diode: 'sound' | 'shorted';
}

/** IEC 61851-1:2017 Annex A: source, its resistance, diode and resistors of the vehicle to PE. */
const pilotAt = async ({ open, source, vehicle, diode }: Pilot): Promise<number> => {
  const [cp = Number.NaN] = await volts(
    [
      `Vpilot s 0 dc ${open}`,
      `Rsource s cp ${source}`,
      ...(diode === 'sound' ? ['Dcar cp r silicon', DIODE] : ['Rcar cp r 1m']),
      `Rvehicle r 0 ${vehicle}`,
    ],
    ['cp'],
  );
  return cp;
};

/** IEC 61851-1:2017 Table A.3: 2.74 kΩ; with 1.3 kΩ, or 270 Ω, beside it. */
const VEHICLE: Readonly<Record<string, number>> = {
  B: 2740,
  C: (2740 * 1300) / 4040,
  D: (2740 * 270) / 3010,
};

const n = ({ values }: Question, name: string): number => {
  const value = values[name];
  if (typeof value !== 'number') throw new Error(`${name} is no number`);
  return value;
};

const asked = (kind: string): readonly Question[] =>
  (KINDS.find(({ id }) => id === kind)?.topics ?? []).flatMap((topic) =>
    Array.from({ length: SEEDS }, (_, seed) => question(kind, topic, 2000 + seed)).filter(
      (one) => one !== null,
    ),
  );

/** What a current of 1 A drops across resistors in a row, so their sum in ohms. */
const row = async (...ohms: readonly number[]): Promise<number> => {
  const [at = Number.NaN] = await volts(
    ['I1 0 x0 dc 1', ...ohms.map((r, i) => `R${i} x${i} ${i === ohms.length - 1 ? '0' : `x${i + 1}`} ${r}`)],
    ['x0'],
  );
  return at;
};

/** What a short lets flow from an a.c. source of so many volts through such a loop: read as a voltage, 1 V an ampere. */
const shorted = async (source: number, ohms: number): Promise<number> => {
  const [amps = Number.NaN] = await volts(
    [`V1 s 0 dc 0 ac ${source} 0`, `Rloop s m ${ohms}`, 'Vread m 0 dc 0', 'Hread i 0 Vread 1', 'Ri i 0 1'],
    ['i'],
    '50 Hz',
  );
  return amps;
};

/** The three lines of a supply shorted together, each with half of the loop in it: what flows in one, A. */
const shortedThree = async (loop: number): Promise<number> => {
  const lines = [0, -120, 120].flatMap((angle, i) => [
    `V${i} s${i} 0 dc 0 ac 230 ${angle}`,
    `R${i} s${i} m${i} ${loop / 2}`,
    `Vread${i} m${i} star dc 0`,
  ]);
  const [amps = Number.NaN] = await volts(
    [...lines, 'Rstar star 0 1meg', 'Hread i 0 Vread0 1', 'Ri i 0 1'],
    ['i'],
    '50 Hz',
  );
  return amps;
};

/** By kind: the figure that the circuit gives, and how near the two have to be, in the question's unit. */
const DRAWN: Readonly<
  Record<
    string,
    { readonly near: number | 'a thousandth'; readonly figure: (one: Question) => Promise<number> }
  >
> = {
  // A real diode drops a little less than 0.7 V at the pilot's milliamperes.
  'level-of-state': {
    near: 0.1,
    figure: (one) =>
      pilotAt({
        open: n(one, 'open'),
        source: 1000,
        vehicle: VEHICLE[String(one.values.state)] ?? Number.NaN,
        diode: 'sound',
      }),
  },
  'protective-ohms': {
    near: 0.011,
    figure: async (one) => (n(one, 'length') * (await row(n(one, 'each')))) / 1000,
  },
  'line-and-protective': {
    near: 0.015,
    figure: (one) =>
      row(
        (n(one, 'length') * n(one, 'lineEach')) / 1000,
        (n(one, 'length') * n(one, 'protectiveEach')) / 1000,
      ),
  },
  'loop-of-parts': {
    near: 0.011,
    figure: (one) => row(n(one, 'external'), n(one, 'fixed'), n(one, 'tether')),
  },
  'prospective-current': { near: 'a thousandth', figure: (one) => shorted(230, n(one, 'ohms')) },
  'prospective-three-phases': {
    near: 'a thousandth',
    figure: (one) => shortedThree(230 / n(one, 'single')),
  },
  'insulation-together': {
    near: 0.06,
    figure: async (one) => {
      const [at = Number.NaN] = await volts(
        ['I1 0 l dc 1u', `Ra l 0 ${n(one, 'first')}meg`, `Rb l 0 ${n(one, 'second')}meg`],
        ['l'],
      );
      return at;
    },
  },
  'electrode-touch': {
    near: 0.1,
    figure: async (one) => {
      const [at = Number.NaN] = await volts(
        [`Ileak 0 met dc ${n(one, 'milliamps')}m`, `Relectrode met 0 ${n(one, 'ohms')}`],
        ['met'],
      );
      return at;
    },
  },
  'electrode-limit': {
    near: 1,
    // The resistance at which the rated current just lifts the earth to 50 V, from what 1 Ω makes of it.
    figure: async (one) => {
      const [each = Number.NaN] = await volts(
        [`Irated 0 met dc ${n(one, 'milliamps')}m`, 'R1 met 0 1'],
        ['met'],
      );
      return 50 / each;
    },
  },
  'volt-drop': {
    near: 0.1,
    // Out by the line and back by the neutral: each half of the tabled figure.
    figure: async (one) => {
      const half = (n(one, 'each') * n(one, 'length')) / 2000;
      const [line = 0, neutral = 0] = await volts(
        ['V1 s 0 dc 230', `Rl s l ${half}`, `Iload l u dc ${n(one, 'amps')}`, `Rn u 0 ${half}`],
        ['l', 'u'],
      );
      return 230 - (line - neutral);
    },
  },
};

test.each(Object.keys(DRAWN))('%s', async (kind) => {
  const { near, figure } = DRAWN[kind] as (typeof DRAWN)[string];
  const all = asked(kind);
  expect(all.length).toBeGreaterThanOrEqual(SEEDS);
  for (const one of all) {
    if (one.way !== 'figure') throw new Error(`${one.id} asks for no figure`);
    const theirs = await figure(one);
    const most = near === 'a thousandth' ? Math.max(0.51, theirs / 1000) : near;
    expect(Math.abs(one.answer - theirs), `${one.id}: ${one.answer}, ${theirs}`).toBeLessThanOrEqual(most);
    // And no misconception's figure is the circuit's.
    for (const { id, value } of one.mistakes)
      expect(Math.abs(value - theirs), `${one.id} ${id}`).toBeGreaterThan(one.tolerance);
    held += 1;
  }
});

test('source-resistance: with it the circuit gives both peaks, with a misconception’s it does not', async () => {
  for (const one of asked('source-resistance')) {
    if (one.way !== 'figure') throw new Error(`${one.id} asks for no figure`);
    const loadedBehind = async (source: number): Promise<number> => {
      const [cp = Number.NaN] = await volts(
        [
          `Vpilot s 0 dc ${n(one, 'open')}`,
          `Rsource s cp ${source}`,
          `Vdiode cp r dc ${n(one, 'drop')}`,
          `Rvehicle r 0 ${n(one, 'load')}`,
        ],
        ['cp'],
      );
      return cp;
    };
    expect(Math.abs((await loadedBehind(one.answer)) - n(one, 'loaded')), one.id).toBeLessThanOrEqual(0.01);
    for (const { id, value } of one.mistakes)
      expect(Math.abs((await loadedBehind(value)) - n(one, 'loaded')), `${one.id} ${id}`).toBeGreaterThan(
        0.02,
      );
    held += 1;
  }
});

const rightOf = (one: Question): Readonly<Record<string, unknown>> => {
  const right = one.way === 'choice' ? one.choices.find(({ id }) => id === one.answer) : undefined;
  if (right === undefined) throw new Error(`${one.id} has no right choice`);
  return { id: right.id, ...right.values };
};

test('low-half: the negative peak with a real diode, and with none', async () => {
  for (const one of asked('low-half')) {
    const vehicle = VEHICLE[String(one.values.state)] ?? Number.NaN;
    const diode = one.values.diode === 'sound' ? 'sound' : 'shorted';
    const low = await pilotAt({ open: -12, source: 1000, vehicle, diode });
    expect(Math.abs(low - Number(rightOf(one).volts)), `${one.id}: ${low}`).toBeLessThanOrEqual(0.06);
    // No other choice is as near.
    if (one.way === 'choice')
      for (const other of one.choices)
        if (other.id !== one.answer)
          expect(Math.abs(low - Number(other.values?.volts)), one.id).toBeGreaterThan(0.5);
    held += 1;
  }
});

test('state-of-level: of the four states the circuit is nearest in the one that is right', async () => {
  const levels: [string, number][] = [['A', 12]];
  for (const [state, vehicle] of Object.entries(VEHICLE))
    levels.push([state, await pilotAt({ open: 12, source: 1000, vehicle, diode: 'sound' })]);
  for (const one of asked('state-of-level')) {
    const [nearest] = levels.toSorted(
      (x, y) => Math.abs(x[1] - n(one, 'volts')) - Math.abs(y[1] - n(one, 'volts')),
    );
    expect(rightOf(one).id, one.id).toBe(nearest?.[0]);
    held += 1;
  }
});

test('current-of-times: the peak that its picture shows is that of a connected vehicle', async () => {
  const peak = await pilotAt({ open: 12, source: 1000, vehicle: 2740, diode: 'sound' });
  for (const { picture } of asked('current-of-times')) {
    expect(Math.abs((picture?.high ?? Number.NaN) - peak)).toBeLessThanOrEqual(0.1);
    held += 1;
  }
});

/** Closed and open contacts of the unit, with nothing plugged in, and a two-pole detector between two conductors, Ω. */
const CONTACT = { closed: 0.01, open: 1e9 };
const DETECTOR = 300_000;

test('which-pole: the three pairs through contacts as the answer has them', async () => {
  for (const one of asked('which-pole')) {
    const stuck = String(rightOf(one).id);
    const supply = n(one, 'lineEarth') || 230;
    const pairs = [
      ['l', 'n', 'lineNeutral'],
      ['l', 'pe', 'lineEarth'],
      ['n', 'pe', 'neutralEarth'],
    ] as const;
    for (const [a, b, name] of pairs) {
      const [high = 0, low = 0] = await volts(
        [
          `Vsupply s 0 dc 0 ac ${supply} 0`,
          `Rline s l ${stuck === 'none' ? CONTACT.open : CONTACT.closed}`,
          `Rneutral z n ${stuck === 'both' ? CONTACT.closed : CONTACT.open}`,
          'Rjoined z 0 0.01',
          'Rearth pe 0 0.1',
          `Rdetector ${a} ${b} ${DETECTOR}`,
        ],
        [a, b],
        '50 Hz',
      );
      expect(Math.abs(Math.abs(high - low) - n(one, name)), `${one.id} ${name}`).toBeLessThanOrEqual(1);
      held += 1;
    }
  }
});
