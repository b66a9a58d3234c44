/** The screens of what is given out: a learner's, and a tutor's two, each of which comes when it is asked for. */
import { lazy } from 'react';
import type { Bench } from '../../flow/bench.ts';
import { loaded } from '../../flow/loading.ts';
import { withTests } from '../../flow/madeReady.ts';
import type { Wish } from '../wish.ts';

const Given = lazy(async () => ({ default: (await loaded(() => import('./Given.tsx'))).Given }));
const GivenAgain = lazy(async () => ({
  default: (await withTests(() => import('./GivenAgain.tsx'))).GivenAgain,
}));
const Give = lazy(async () => ({ default: (await withTests(() => import('./Give.tsx'))).Give }));
const Collect = lazy(async () => ({
  default: (await withTests(() => import('../collect/Collect.tsx'))).Collect,
}));

interface Props {
  readonly path: string;
  /** A giving-out that was opened from a file. */
  readonly text: string;
  readonly onBegin: (making: () => Generator<null, Bench>) => void;
  readonly onWish: (wish: Wish) => void;
}

export function GivenAndCollected({ path, ...given }: Props) {
  const [, screen, rest = null] = path.split('/');
  if (screen === 'give') return rest === null ? <Give /> : <GivenAgain id={rest} />;
  return screen === 'collect' ? <Collect row={rest} /> : <Given letters={rest} {...given} />;
}
