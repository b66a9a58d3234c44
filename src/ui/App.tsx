/**
 * The whole page: which screen the address asks for, and the attempt in hand. The first screen is small; all that
 * simulates and marks is loaded when an attempt begins.
 */
import { lazy, Suspense, useCallback, useState } from 'react';
import { Redirect, Route, Router, Switch } from 'wouter';
import { navigate, useHashLocation } from 'wouter/use-hash-location';
import type { Problem } from '../scenario/problems.ts';
import type { Bench } from './flow/bench.ts';
import type { Wish } from './screens/Choose.tsx';
import { Choose } from './screens/Choose.tsx';
import type { Offered } from './screens/offered.ts';
import { WHOLE_JOB } from './screens/offered.ts';

const AttemptScreen = lazy(async () => ({
  default: (await import('./screens/AttemptScreen.tsx')).AttemptScreen,
}));
const FirstRun = lazy(async () => ({ default: (await import('./screens/firstRun/FirstRun.tsx')).FirstRun }));
const Words = lazy(async () => ({ default: (await import('./screens/Words.tsx')).Words }));
const Access = lazy(async () => ({ default: (await import('./screens/Access.tsx')).Access }));
const Sources = lazy(async () => ({ default: (await import('./screens/Sources.tsx')).Sources }));

interface InHand {
  readonly bench: Bench;
  /** Another number for another attempt, so that nothing of the old one stays on the screen. */
  readonly number: number;
}

export function App() {
  const [inHand, setInHand] = useState<InHand | null>(null);
  const [openedFiles, setOpenedFiles] = useState<readonly Offered[]>([]);
  const [refused, setRefused] = useState<{ name: string; problems: readonly Problem[] } | null>(null);

  const take = useCallback((bench: Bench) => {
    setInHand((before) => ({ bench, number: (before?.number ?? 0) + 1 }));
    setRefused(null);
    navigate('/attempt');
  }, []);
  const keepUp = useCallback((bench: Bench) => setInHand((before) => before && { ...before, bench }), []);

  const leave = useCallback(() => navigate('/'), []);

  const grant = async (wish: Wish) => {
    const start = await import('./flow/start.ts');
    const result =
      wish.kind === 'begin'
        ? start.begun(wish.offered, wish.support, wish.trainee)
        : await start.opened(wish.source);
    if (result.kind === 'attempt') return take(result.bench);
    const name = wish.kind === 'begin' ? wish.offered.title : wish.name;
    if (result.kind === 'refused') return setRefused({ name, problems: result.problems });
    // Checked against the schema, so it has what the list shows.
    const offered = result.file as Offered;
    setRefused(null);
    setOpenedFiles((before) => [offered, ...before.filter(({ id }) => id !== offered.id)]);
  };

  return (
    <Router hook={useHashLocation}>
      <Suspense fallback={<p className="columns">Loading the bench …</p>}>
        <Switch>
          <Route path="/attempt">
            {inHand === null ? (
              <Redirect to="/" />
            ) : (
              <AttemptScreen key={inHand.number} bench={inHand.bench} onAgain={take} onChange={keepUp} />
            )}
          </Route>
          <Route path="/first-run">
            <FirstRun
              onWholeJob={() =>
                void grant({ kind: 'begin', offered: WHOLE_JOB, support: 'practice', trainee: '' })
              }
              onLeave={leave}
            />
          </Route>
          <Route path="/sources">
            <Sources />
          </Route>
          <Route path="/words">
            <Words />
          </Route>
          <Route path="/accessibility">
            <Access />
          </Route>
          <Route>
            <Choose
              refused={refused}
              opened={openedFiles}
              inHand={inHand === null ? null : inHand.bench.run.scenario.title}
              onWish={(wish) => void grant(wish)}
              onReturn={() => navigate('/attempt')}
            />
          </Route>
        </Switch>
      </Suspense>
    </Router>
  );
}
