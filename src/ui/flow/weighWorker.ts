/**
 * The worker that weighs a tutor's job while it is being changed, draws one, and weighs variants: the functions of the command line, in
 * slices, so that it hears when something else is wanted. It says nothing in words.
 */
import type { Weight } from '../../desk/variants.ts';
import { weighingVariant } from '../../desk/variants.ts';
import type { JobAsked } from '../../fairness/make.ts';
import { makingJob } from '../../fairness/make.ts';
import { Trials } from '../../fairness/trials.ts';
import type { FairnessView, SoFar } from '../../fairness/view.ts';
import { viewing } from '../../fairness/view.ts';
import type { Problem } from '../../scenario/problem.ts';
import { readingScenario } from '../../scenario/readScenario.ts';
import { madeJobWords } from '../../words/madeJobs.ts';
import { inSlices } from './inSlices.ts';

/** What a page asks of it; whatever it was asked before is over then. */
export type Asked =
  | { readonly ask: 'weigh'; readonly number: number; readonly file: unknown }
  | { readonly ask: 'make'; readonly number: number; readonly job: JobAsked }
  | {
      /** The jobs as the variant of the number `n`; null: as they are. */
      readonly ask: 'compare';
      readonly number: number;
      readonly jobs: readonly object[];
      readonly word: string;
      readonly n: number | null;
    }
  | { readonly ask: 'nothing' };

/** What it tells of the question of that number. */
export type Answer = { readonly number: number } & (
  | { readonly told: 'so far'; readonly soFar: SoFar }
  | { readonly told: 'weighed'; readonly view: FairnessView }
  | { readonly told: 'refused'; readonly problems: readonly Problem[] }
  | { readonly told: 'made'; readonly file: object | null }
  | { readonly told: 'compared'; readonly n: number | null; readonly by: readonly Weight[] | null }
  | { readonly told: 'failed'; readonly why: string }
);

/** What is used here of a worker's surroundings: TypeScript's own description of them and that of a page exclude each other. */
declare const self: {
  postMessage(answer: Answer): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<Asked>) => void): void;
};

/** Nobody is kept waiting here but whoever asks for something else, ms. */
const SLICE = 80;

let over = new AbortController();
/** Of the job as it was before its last change, and what read the same there. */
let trials: Trials | null = null;
let alike: readonly string[] = [];

function* weighing(file: unknown): Generator<SoFar | null, FairnessView | readonly Problem[]> {
  const read = yield* readingScenario(file);
  if (!read.ok) return read.problems;
  trials = new Trials(read.scenario, trials);
  return yield* viewing(read.scenario, trials, alike);
}

async function weigh(number: number, file: unknown): Promise<void> {
  const result = await inSlices(
    weighing(file),
    over.signal,
    (soFar) => {
      if (soFar !== null && soFar.revealedBy !== null) self.postMessage({ number, told: 'so far', soFar });
    },
    SLICE,
  );
  if (result === null) return;
  if ('table' in result) {
    alike = result.lookalikes.flatMap(({ causes }) => causes);
    self.postMessage({ number, told: 'weighed', view: result });
  } else self.postMessage({ number, told: 'refused', problems: result });
}

async function make(number: number, job: JobAsked): Promise<void> {
  const { signal } = over;
  const file = await inSlices(makingJob(job, madeJobWords), signal, () => {}, SLICE);
  if (!signal.aborted) self.postMessage({ number, told: 'made', file });
}

async function compare({ number, jobs, word, n }: Extract<Asked, { ask: 'compare' }>): Promise<void> {
  const { signal } = over;
  const by = await inSlices(weighingVariant(jobs, word, n), signal, () => {}, SLICE);
  if (!signal.aborted) self.postMessage({ number, told: 'compared', n, by });
}

function doing(asked: Exclude<Asked, { ask: 'nothing' }>): Promise<void> {
  switch (asked.ask) {
    case 'weigh':
      return weigh(asked.number, asked.file);
    case 'make':
      return make(asked.number, asked.job);
    case 'compare':
      return compare(asked);
  }
}

self.addEventListener('message', ({ data }) => {
  over.abort();
  over = new AbortController();
  if (data.ask === 'nothing') return;
  const { number } = data;
  doing(data).catch((error) =>
    self.postMessage({
      number,
      told: 'failed',
      why: error instanceof Error ? error.message : String(error),
    }),
  );
});
