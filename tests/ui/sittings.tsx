/** People at a bench without a browser: the flow machine, its page as markup, and what a faultless one does on a sound unit. */
import { renderToStaticMarkup } from 'react-dom/server';
import { Router } from 'wouter';
import type { Actor } from 'xstate';
import { createActor } from 'xstate';
import { workedAttempt } from '../../src/attempt/marks/worked.ts';
import type { Rung } from '../../src/attempt/record/rung.ts';
import type { Operation } from '../../src/bench/operation.ts';
import type { Outcome } from '../../src/bench/perform.ts';
import { CATALOGUE } from '../../src/faults/catalogue.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { attemptMachine } from '../../src/ui/flow/attemptMachine.ts';
import { newBench } from '../../src/ui/flow/bench.ts';
import { BenchScreen } from '../../src/ui/screens/bench/BenchScreen.tsx';
import { scenarioNamed } from '../helpers/scenarios.ts';

export type Sitting = Actor<typeof attemptMachine>;

/** One test of a sound run: what was done in it. */
export interface Done {
  readonly test: string;
  readonly operations: readonly Operation[];
}

export function sit(file: object, rung: Rung): Sitting {
  const read = readScenario(file);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return createActor(attemptMachine, {
    input: { bench: newBench(read.scenario, read.file, { rung }) },
  }).start();
}

export const pageOf = (sitting: Sitting): string =>
  renderToStaticMarkup(
    <Router ssrPath="/attempt">
      <BenchScreen state={sitting.getSnapshot()} send={sitting.send} wall={() => 0} keepFailed={false} />
    </Router>,
  );

export const soundRun = (file: object): readonly Done[] => {
  const read = readScenario(file);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { entries } = workedAttempt(read.scenario, read.file);
  const order = entries.flatMap((entry) => (entry.kind === 'prediction' ? [entry.test] : []));
  return order.map((name) => ({
    test: name,
    operations: entries.flatMap((entry) =>
      entry.kind === 'operation' && entry.test === name ? [entry.operation] : [],
    ),
  }));
};

export const perceptible = ({ readings, seen, events, found, refused, unsafe }: Outcome): string =>
  JSON.stringify({ readings, seen, events, found, refused, unsafe: unsafe.map(({ id }) => id) });

const isPossible = (file: object, fault: string): boolean =>
  readScenario({ ...file, faults: [{ fault }] }).ok;

const soundFile = (id: string) => ({
  ...(scenarioNamed(id).file as { site: object; unit: object }),
  faults: [],
});
const home = soundFile('harbour-mews');

/** A site of each kind, sound; each fault is tried on the first of them that can have it. Every line asked in turn, or ten lines to choose from. */
export const SITES: readonly { readonly id: string; readonly rung: Rung; readonly file: object }[] = [
  { id: 'TN-C-S', rung: 2, file: home },
  { id: 'TN-S, three-phase', rung: 3, file: soundFile('foundry-yard') },
  { id: 'TT', rung: 3, file: soundFile('weir-cottage') },
  { id: 'own electrode beside PME', rung: 3, file: soundFile('curlew-house') },
  {
    rung: 3,
    id: 'TN-C-S, with bonded pipes, an arrester, and a sensor on a service for two points',
    file: {
      ...home,
      site: { ...home.site, metEarthResistance: 20, nextPoint: { ratedCurrent: 32 } },
      unit: { ...home.unit, surgeArrester: true, serviceLimit: 60 },
    },
  },
];
const siteOf = (fault: string): string | undefined => SITES.find(({ file }) => isPossible(file, fault))?.id;
/** A wrong design stands in the papers: that is where it is to be read. */
const isHidden = (entry: (typeof CATALOGUE)[number]): boolean =>
  entry.kind === 'fault' && entry.alter === undefined;
export const FAULTS = CATALOGUE.filter(isHidden).map(({ id }) => ({ id, site: siteOf(id) }));
