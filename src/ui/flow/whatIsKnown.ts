/**
 * What the trainee knows and how: positions from the trainee's own hand, and what was measured, with its time.
 * Nothing is said that nobody measured. Also what was seen and heard, operation by operation.
 */

import type { Isolator } from '../../bench/plant.ts';
import { ISOLATORS } from '../../bench/plant.ts';
import type { Proof, Proofs } from '../../bench/proofs.ts';
import { afterDark, afterProving, afterSwitchingOn, showDark } from '../../bench/proofs.ts';
import { PLACES } from '../../bench/terminals.ts';
import type { DetectorProof } from '../../bench/usual.ts';
import type { Happening } from '../../bench/world.ts';
import { benchTime } from '../../words/benchTime.ts';
import { refusalText } from '../../words/refusals.ts';
import { INDICATOR_WORDS, INSPECTED_WORDS, sightText } from '../../words/seen.ts';
import { DISTURBANCE_WORDS, leakageText, loadText } from '../../words/settings.ts';
import { presentsText } from '../../words/standIn.ts';
import { PLACE_WORDS } from '../../words/terminals.ts';
import { PLUG_WORDS } from '../../words/trade.ts';
import type { Bench, Happened } from './bench.ts';
import type { MainPosition, Position, SupplyPosition } from './position.ts';

export interface Known {
  readonly what: string;
  readonly value: string;
  readonly how: string;
}

export const SUPPLY_WORDS: Readonly<Record<SupplyPosition, string>> = {
  on: 'on',
  'off-locked': 'off, all poles, locked',
  'off-line-locked': 'off, line poles only, locked',
  'off-unlocked': 'off, all poles, not locked',
};

export const MAIN_WORDS: Readonly<Record<MainPosition, string>> = {
  on: 'on',
  'off-locked': 'off, locked',
  'off-unlocked': 'off, not locked',
};

const switches = ({ operation }: Happened, at: Isolator): boolean =>
  operation.op === 'isolate'
    ? operation.at === at
    : operation.op === 'energise' && (operation.at ?? at) === at;

/** With what a place was shown dead, and when. */
export const proofText = ({ at, isWhole }: Proof): string =>
  isWhole
    ? `two-pole detector, ${benchTime(at)}`
    : `two-pole detector, ${benchTime(at)}, not proved after the test`;

/** What stands proved dead, each with its bench time, s; nothing while nothing is off. */
export function proofsOf({ run, happened }: Bench): Proofs {
  const before = (run.handedOver?.steps ?? []).map(({ sample: { operation }, outcome }) => ({
    operation,
    outcome,
    at: outcome.seen.at,
  }));
  let proofs: Proofs = {};
  let off: readonly Isolator[] = [];
  for (const { operation, outcome, at } of [...before, ...happened]) {
    if (operation.op === 'isolate') off = [...off.filter((x) => x !== operation.at), operation.at];
    if (operation.op === 'energise') {
      const on = operation.at === undefined ? ISOLATORS : [operation.at];
      off = off.filter((x) => !on.includes(x));
      proofs = afterSwitchingOn(proofs, on);
    }
    if (showDark(outcome.events)) proofs = afterDark(proofs);
    if (operation.op === 'prove-dead')
      proofs = afterProving(proofs, { ...operation, wasDark: showDark(outcome.events) }, outcome.readings, {
        at,
        off,
      });
  }
  return proofs;
}

/** How the detector was proved when the trainee last tested for dead; null before that. */
export const lastProof = ({ happened }: Bench): DetectorProof | null =>
  happened.reduce<DetectorProof | null>(
    (last, { operation, test }) => (operation.op === 'prove-dead' && test !== null ? operation.proof : last),
    null,
  );

/** The supply as it was switched, the main switch where it is off. */
export const supplyText = ({ supply, main }: Position): string =>
  main === 'on'
    ? SUPPLY_WORDS[supply]
    : `${supply === 'on' ? '' : `${SUPPLY_WORDS[supply]}; `}main switch ${MAIN_WORDS[main]}`;

export function knownOf(bench: Bench): readonly Known[] {
  const { position, happened } = bench;
  const proofs = proofsOf(bench);
  const switched = (at: Isolator) => happened.findLast((one) => switches(one, at))?.at;
  const asFound = bench.run.handedOver === null ? 'from the start' : 'as handed over';
  const when = (at: number | undefined) => (at === undefined ? asFound : `your hand, ${benchTime(at)}`);
  const handled = (...ops: string[]) => happened.findLast(({ operation }) => ops.includes(operation.op))?.at;
  return [
    { what: 'supply', value: SUPPLY_WORDS[position.supply], how: when(switched('origin')) },
    { what: 'main switch', value: MAIN_WORDS[position.main], how: when(switched('main-switch')) },
    {
      what: 'unit',
      value: `cover ${position.cover}, conductors ${position.unit}`,
      how: when(handled('open-cover', 'close-cover', 'disconnect', 'reconnect')),
    },
    { what: 'stand-in', value: standInText(bench), how: when(handled('vehicle')) },
    ...disturbed(bench).map((value) => ({ what: 'disturbance', value, how: when(handled('supply')) })),
    ...PLACES.map((place) => {
      const proof = proofs[place];
      return {
        what: PLACE_WORDS[place] ?? place,
        value: proof?.isWhole === true ? 'proved dead' : 'not proved dead',
        how: proof === undefined ? '' : proofText(proof),
      };
    }),
  ];
}

/**
 * The longest start delay by the unit's sheet, s, while it may be running: from plugging in, power or permission on, until
 * it has passed or is overridden. Null where there is none.
 */
export function runningStartDelay({ run, happened, position }: Bench): number | null {
  const { startDelay, permission } = run.papers.sheet;
  const began = happened.findLastIndex(
    ({ operation: o }) =>
      o.op === 'energise' ||
      (o.op === 'vehicle' && o.plugged === true) ||
      (o.op === 'press' && o.button === 'authorise'),
  );
  const pressed = (button: string): boolean =>
    happened.some(({ operation: o }, i) => i >= began && o.op === 'press' && o.button === button);
  const passed = (run.times.at(-1) ?? run.began) - (happened[began]?.at ?? run.began);
  const isRunning =
    position.plugged &&
    (permission !== 'authorise' || pressed('authorise')) &&
    !pressed('override-delay') &&
    passed < startDelay;
  return isRunning ? startDelay : null;
}

/** Disturbances that were set and not yet taken back; a load limit that stands on the sheet is none. */
function disturbed({ happened, run }: Bench): readonly string[] {
  const set: Record<string, unknown> = {};
  for (const { operation } of happened)
    if (operation.op === 'supply')
      for (const [name, value] of Object.entries(operation)) if (value !== undefined) set[name] = value;
  const atRest: Record<string, unknown> = {
    pen: 'sound',
    siteLoad: 0,
    nextPoint: run.papers.site.nextPoint?.draws ?? null,
    loadLimit: run.papers.sheet.loadLimit,
  };
  return Object.entries(set).flatMap(([name, value]) =>
    name in DISTURBANCE_WORDS && value !== (atRest[name] ?? null)
      ? [DISTURBANCE_WORDS[name]?.(value) ?? name]
      : [],
  );
}

export function standInText({ position: p }: Bench): string {
  return [
    p.plugged ? 'plugged in' : 'unplugged',
    presentsText(p),
    ...(p.load === 0 ? [] : [loadText(p.load)]),
    ...(p.leakage === null ? [] : [leakageText(p.leakage)]),
  ].join(', ');
}

export interface Perceived {
  readonly at: number;
  readonly text: string;
  readonly heavy: boolean;
}

const HEARD: Readonly<Record<Happening['what'], string>> = {
  'contactor closed': 'heard: contactor closes',
  'contactor opened': 'heard: contactor opens',
  'plug locked': 'heard: plug locked',
  'plug released': 'heard: plug released',
  'unit breaker tripped': 'heard: the unit’s own device trips',
  'upstream device tripped': 'heard: the device at the origin trips',
  'circuit breaker tripped': 'heard: the circuit’s breaker trips',
  'instrument fuse opened': 'the instrument’s fuse opened',
  'detector dark': 'seen: the detector stays dark on its proving unit',
};

/** What nobody should miss. */
const HEAVY: readonly Happening['what'][] = ['instrument fuse opened', 'detector dark'];

/** What was seen and heard in the operations from `first` on; `before` is what was last seen. */
export function perceived(happened: readonly Happened[], first: number): readonly Perceived[] {
  const list: Perceived[] = [];
  let last = happened[first - 1]?.outcome.seen;
  for (const { at, operation, outcome } of happened.slice(first)) {
    for (const { at: moment, what } of outcome.events)
      list.push({ at: moment, text: HEARD[what], heavy: HEAVY.includes(what) });
    const { seen, refused } = outcome;
    if (operation.op === 'inspect') list.push(...looked(at, outcome.found));
    if (refused !== null) list.push({ at, text: `not done: ${refusalText(refused)}`, heavy: true });
    if (seen.indicator !== last?.indicator)
      list.push({ at: seen.at, text: `seen: unit says “${INDICATOR_WORDS[seen.indicator]}”`, heavy: false });
    if (last !== undefined && seen.plug !== last.plug)
      list.push({ at: seen.at, text: `felt: ${PLUG_WORDS[seen.plug]}`, heavy: false });
    last = seen;
  }
  return list;
}

/** What an inspection showed, thing by thing. */
const looked = (at: number, found: Happened['outcome']['found']): readonly Perceived[] =>
  found.length === 0
    ? [{ at, text: 'seen: nothing amiss', heavy: false }]
    : found.map(({ where, what }) => ({
        at,
        text: `seen: ${INSPECTED_WORDS[where]}: ${sightText(what)}`,
        heavy: false,
      }));
