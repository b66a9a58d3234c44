/**
 * The whole page: which screen the address asks for, and the attempt in hand. The first screen is small; all that
 * simulates and marks is loaded when an attempt begins.
 */
import { lazy, Suspense, useCallback, useEffect, useState } from 'react';
import { Redirect, Route, Router, Switch } from 'wouter';
import { navigate, useHashLocation } from 'wouter/use-hash-location';
import type { Bench } from './flow/bench.ts';
import type { InHand, Refusal } from './flow/useInHand.ts';
import { isDueAtLeaving, useInHand } from './flow/useInHand.ts';
import type { Wish } from './screens/Choose.tsx';
import { Choose } from './screens/Choose.tsx';
import type { Offered } from './screens/offered.ts';
import { WHOLE_JOB } from './screens/offered.ts';

const AttemptScreen = lazy(async () => ({
  default: (await import('./screens/AttemptScreen.tsx')).AttemptScreen,
}));
const FirstRun = lazy(async () => ({ default: (await import('./screens/firstRun/FirstRun.tsx')).FirstRun }));
const Worked = lazy(async () => ({ default: (await import('./screens/worked/Worked.tsx')).Worked }));
const Words = lazy(async () => ({ default: (await import('./screens/Words.tsx')).Words }));
const Access = lazy(async () => ({ default: (await import('./screens/Access.tsx')).Access }));
const NotInHand = lazy(async () => ({
  default: (await import('./screens/elsewhere/NotInHand.tsx')).NotInHand,
}));
const ReadOnly = lazy(async () => ({ default: (await import('./screens/elsewhere/ReadOnly.tsx')).ReadOnly }));
const Leaving = lazy(async () => ({ default: (await import('./screens/elsewhere/Leaving.tsx')).Leaving }));
const MyRecord = lazy(async () => ({ default: (await import('./screens/record/MyRecord.tsx')).MyRecord }));
const Sources = lazy(async () => ({ default: (await import('./screens/Sources.tsx')).Sources }));

export function App() {
  const { table, problem, begin, goOn, open, read, letShow, putAway, forget } = useInHand();
  const [openedFiles, setOpenedFiles] = useState<readonly Offered[]>([]);
  const [refused, setRefused] = useState<Refusal>(null);
  /** An assessment about to be left that was not handed in, and what is to be done then. */
  const [leaving, setLeaving] = useState<{ inHand: InHand; go: () => void } | null>(null);
  const [shown, setShown] = useState<Offered | null>(null);
  const [place] = useHashLocation();
  const inHand = table?.kind === 'in hand' ? table : null;

  const show = (refusal: Refusal) => {
    setRefused(refusal);
    navigate(refusal === null ? '/attempt' : '/');
  };
  const take = useCallback(
    async (bench: Bench) => {
      await begin(bench);
      setRefused(null);
      navigate('/attempt');
    },
    [begin],
  );

  const leave = useCallback(() => navigate('/'), []);

  const grant = async (wish: Wish) => {
    if (wish.kind === 'go on') return show(await goOn(wish.about, 'ask'));
    if (wish.kind === 'put away') return putAway(wish.id);
    if (wish.kind === 'show') {
      setShown(wish.offered);
      return navigate('/shown');
    }
    const start = await import('./flow/start.ts');
    const result =
      wish.kind === 'begin'
        ? start.begun(wish.offered, wish.rung, wish.trainee)
        : await start.opened(wish.file);
    if (result.kind === 'attempt')
      return wish.kind === 'begin' ? take(result.bench) : show(await open(result.bench));
    const name = wish.kind === 'begin' ? wish.offered.title : wish.file.name;
    if (result.kind === 'refused') return setRefused({ name, problems: result.problems });
    // Checked against the schema, so it has what the list shows.
    const offered = result.file as Offered;
    setRefused(null);
    setOpenedFiles((before) => [offered, ...before.filter(({ id }) => id !== offered.id)]);
  };

  // Another page begins at its top.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the page is the very occasion
  useEffect(() => scrollTo(0, 0), [place]);
  useEffect(() => {
    if (place !== '/attempt' && inHand !== null && isDueAtLeaving(inHand))
      setLeaving({ inHand, go: () => {} });
  }, [place, inHand]);

  return (
    <Router hook={useHashLocation}>
      <Suspense fallback={<p className="columns">Loading the bench …</p>}>
        <Switch>
          <Route path="/attempt">
            {table === null ? (
              <Redirect to="/" />
            ) : table.kind === 'in hand' ? (
              <AttemptScreen
                key={table.number}
                inHand={table}
                problem={problem}
                onConcluded={letShow}
                onAgain={(bench) => {
                  if (isDueAtLeaving(table)) setLeaving({ inHand: table, go: () => void take(bench) });
                  else void take(bench);
                }}
              />
            ) : table.kind === 'reading' ? (
              <ReadOnly
                bench={table.bench}
                place={table.place}
                onTakeOver={async () => show(await goOn(aboutOf(table.id, table.bench), 'take over'))}
                onReadAgain={async () => show(await read(table.id, aboutOf(table.id, table.bench).title))}
              />
            ) : (
              <NotInHand
                title={table.title}
                why={table.why}
                onRead={async () => show(await read(table.id, table.title))}
                onTakeOver={async () => show(await goOn({ ...table, concluded: false }, 'take over'))}
              />
            )}
          </Route>
          <Route path="/first-run">
            <FirstRun
              onWholeJob={() => void grant({ kind: 'begin', offered: WHOLE_JOB, rung: 1, trainee: '' })}
              onLeave={leave}
            />
          </Route>
          <Route path="/shown">
            {shown === null ? (
              <Redirect to="/" />
            ) : (
              <Worked
                offered={shown}
                onNowYou={() => void grant({ kind: 'begin', offered: shown, rung: 1, trainee: '' })}
                onLeave={leave}
              />
            )}
          </Route>
          <Route path="/record">
            <MyRecord onOpen={async (about) => show(await goOn(about, 'ask'))} onDeleted={forget} />
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
              inHand={inHand}
              onWish={(wish) => void grant(wish)}
              onReturn={() => navigate('/attempt')}
            />
          </Route>
        </Switch>
        {leaving === null ? null : (
          <Leaving
            inHand={leaving.inHand}
            onLeave={() => {
              leaving.go();
              setLeaving(null);
            }}
          />
        )}
      </Suspense>
    </Router>
  );
}

const aboutOf = (id: string, { run }: Bench) => ({ id, title: run.scenario.title, concluded: false });
