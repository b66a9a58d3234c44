/**
 * The whole page: which screen the address asks for, and the open attempt. The first screen is small; all that
 * simulates and marks is loaded when an attempt begins.
 */
import {
  lazy,
  Suspense,
  useCallback,
  useDeferredValue,
  useEffect,
  useLayoutEffect,
  useMemo,
  useState,
} from 'react';
import { Redirect, Route, Router, Switch } from 'wouter';
import { navigate, useHashLocation } from 'wouter/use-hash-location';
import { aimNamed } from '../scenario/aims.ts';
import { keepHereLast } from '../store/hereLast.ts';
import { AIM_WORDS } from '../words/aims.ts';
import { PAGE_TITLES, pageTitle } from '../words/pageTitles.ts';
import { addressIn, partsOf } from './flow/aimLinks.ts';
import type { Bench } from './flow/bench.ts';
import { afterEngine, loaded } from './flow/loading.ts';
import { benchReady, madeReady, withTests } from './flow/madeReady.ts';
import { useFailure } from './flow/useFailure.ts';
import type { AttemptOnPage, OpenAttempt, Refusal } from './flow/useOpenAttempt.ts';
import { isDueAtLeaving, useOpenAttempt } from './flow/useOpenAttempt.ts';
import { usePreparing } from './flow/usePreparing.ts';
import { AfterFailure, failureTitle } from './parts/AfterFailure.tsx';
import { Dialog } from './parts/Dialog.tsx';
import { GettingReady } from './parts/GettingReady.tsx';
import { Boundary } from './screens/elsewhere/Boundary.tsx';
import { ComingBack } from './screens/elsewhere/ComingBack.tsx';
import { COURSE_AIMS } from './screens/firstRun/courseAims.ts';
import { AimStart } from './screens/home/AimStart.tsx';
import { Home } from './screens/home/Home.tsx';
import type { Entry, Offered } from './screens/offered.ts';
import type { Wish } from './screens/wish.ts';

const AttemptScreen = lazy(async () => ({
  default: (await afterEngine(() => import('./screens/AttemptScreen.tsx'))).AttemptScreen,
}));
const Desk = lazy(async () => ({
  default: (await withTests(() => import('./screens/desk/Desk.tsx'))).Desk,
}));
const Choose = lazy(async () => ({
  default: (await loaded(() => import('./screens/Choose.tsx'))).Choose,
}));
const FirstRun = lazy(async () => ({
  default: (await withTests(() => import('./screens/firstRun/FirstRun.tsx'), COURSE_AIMS)).FirstRun,
}));
const Worked = lazy(async () => ({
  default: (await withTests(() => import('./screens/worked/Worked.tsx'))).Worked,
}));
const Words = lazy(async () => ({
  default: (await afterEngine(() => import('./screens/Words.tsx'))).Words,
}));
const Access = lazy(async () => ({
  default: (await loaded(() => import('./screens/Access.tsx'))).Access,
}));
const OpenElsewhere = lazy(async () => ({
  default: (await loaded(() => import('./screens/elsewhere/OpenElsewhere.tsx'))).OpenElsewhere,
}));
const ReadOnly = lazy(async () => ({
  default: (await loaded(() => import('./screens/elsewhere/ReadOnly.tsx'))).ReadOnly,
}));
const Leaving = lazy(async () => ({
  default: (await loaded(() => import('./screens/elsewhere/Leaving.tsx'))).Leaving,
}));
const Questions = lazy(async () => ({
  default: (await withTests(() => import('./screens/questions/Questions.tsx'))).Questions,
}));
const MyRecord = lazy(async () => ({
  default: (await afterEngine(() => import('./screens/record/MyRecord.tsx'))).MyRecord,
}));
const GivenAndCollected = lazy(async () => ({
  default: (await afterEngine(() => import('./screens/give/GivenAndCollected.tsx'))).GivenAndCollected,
}));
const Sources = lazy(async () => ({
  default: (await withTests(() => import('./screens/Sources.tsx'))).Sources,
}));

export const THIS_PAGE = 'This page';
/** Screens by their addresses, for whoever is told that one failed. */
const SCREEN_NAMES: Readonly<Record<string, string>> = {
  '/': 'The first page',
  '/jobs': 'The list of scenarios',
  '/attempt': 'The bench',
  '/first-run': 'The first run',
  '/first-minute': 'The first minute',
  '/shown': 'The worked run',
  '/questions': 'The questions',
  '/record': 'My record',
  '/sources': 'The list of sources',
  '/words': 'The list of words',
  '/accessibility': 'The page on accessibility',
};

/** Of the page that is drawn; null where an attempt is shown, which says its own. */
function titleOf(path: string, onPage: AttemptOnPage | null): string | null {
  const aim = aimNamed(path.split('/')[2] ?? '');
  if (path === '/attempt') return onPage?.kind === 'open' ? null : pageTitle();
  return pageTitle(
    path.startsWith('/aim/') && aim !== null
      ? AIM_WORDS[aim.id].question
      : PAGE_TITLES[path.replace(/^\/give\/.+/, '/give/')],
  );
}

/** What is opened comes with a file of the page of its own. */
async function opened(file: File, signal: AbortSignal) {
  const { opening, textOf } = await afterEngine(() => import('./flow/opening.ts'));
  const text = await textOf(file);
  return typeof text === 'string' ? madeReady(opening(text), signal) : text;
}

async function begun(wish: Extract<Wish, { kind: 'begin' | 'begin aim' }>, signal: AbortSignal) {
  const { beginningAim, beginningOn, refusedAddress } = await afterEngine(() => import('./flow/start.ts'));
  if (wish.kind === 'begin') return madeReady(beginningOn(wish.offered, wish.rung, wish.trainee), signal);
  const making = beginningAim(wish.address);
  return making === null ? refusedAddress(wish.address) : madeReady(making, signal);
}

export function App() {
  const { onPage: latest, problem, begin, goOn, open, read, letShow, putAway, forget } = useOpenAttempt();
  const [openedFiles, setOpenedFiles] = useState<readonly Entry[]>([]);
  const [refused, setRefused] = useState<Refusal>(null);
  /** An assessment about to be left that was not handed in, and what is to be done then. */
  const [leaving, setLeaving] = useState<{ openAttempt: OpenAttempt; go: () => void } | null>(null);
  const [shown, setShown] = useState<Offered | null>(null);
  /** A giving-out opened from a file. */
  const [givenText, setGivenText] = useState('');
  const [asked] = useHashLocation();
  const now = useMemo(() => ({ place: asked, onPage: latest }), [asked, latest]);
  /** Another page is drawn in slices; the one before it stays until then, though nothing is begun on it any more. */
  const drawn = useDeferredValue(now);
  const isTurning = drawn !== now;
  const { place } = drawn;
  const { path, query } = partsOf(place);
  // An attempt that another tab has taken over goes at once: what is done on it would be lost.
  const onPage = latest === null || latest.kind === 'open' ? drawn.onPage : latest;
  const openAttempt = onPage?.kind === 'open' ? onPage : null;

  const { failure, fail, forget: forgetFailure } = useFailure();
  const { prepare, isLong, cancel } = usePreparing(asked, isTurning, fail);

  const show = (refusal: Refusal | 'left') => {
    // Nothing stands there that could be gone back to.
    if (refusal === 'left') return latest === null && asked === '/attempt' ? navigate('/') : undefined;
    setRefused(refusal);
    // One entry of the history for an attempt, however often it is asked for.
    if (refusal === null) {
      if (asked !== '/attempt') navigate('/attempt');
    } else if (asked !== '/jobs') navigate('/');
  };
  const take = useCallback(
    async (bench: Bench) => {
      await begin(bench);
      setRefused(null);
      // An address that begins a job is not gone back to: it would begin another.
      navigate('/attempt', { replace: location.hash.startsWith('#/aim/') });
    },
    [begin],
  );

  const leave = useCallback(() => navigate('/'), []);

  const ask = (asking: (signal: AbortSignal) => Promise<Refusal | 'left'>) =>
    void prepare(async (signal) => show(await asking(signal)));

  const grant = (wish: Wish) => {
    if (isTurning) return;
    if (wish.kind === 'put away') return void putAway(wish.id);
    if (wish.kind === 'show') {
      setShown(wish.offered);
      return navigate('/shown');
    }
    if (wish.kind === 'go on') return ask((signal) => goOn(wish.about, 'ask', signal));
    void prepare((signal) => beginOrOpen(wish, signal));
  };

  const beginAs = (making: () => Generator<null, Bench>) =>
    void prepare(async (signal) => {
      const bench = await benchReady(making(), signal);
      if (bench !== null) await take(bench);
    });

  const beginOrOpen = async (
    wish: Extract<Wish, { kind: 'begin' | 'begin aim' | 'open' }>,
    signal: AbortSignal,
  ) => {
    const result = await (wish.kind === 'open' ? opened(wish.file, signal) : begun(wish, signal));
    if (result === null) return;
    if (result.kind === 'attempt')
      return wish.kind === 'open' ? show(await open(result.bench, signal)) : take(result.bench);
    if (result.kind === 'given') {
      setGivenText(result.text);
      return navigate('/given');
    }
    const name =
      wish.kind === 'begin' ? wish.offered.title : wish.kind === 'open' ? wish.file.name : 'This address';
    if (result.kind === 'refused') return setRefused({ name, problems: result.problems });
    // Checked against the schema, so it has what the list shows.
    const scenario = result.file as Offered;
    setRefused(null);
    setOpenedFiles((before) => [
      { scenario, from: name },
      ...before.filter((entry) => entry.scenario.id !== scenario.id),
    ]);
  };

  const firstRun = (isMinuteAgain: boolean) => (
    <FirstRun
      isMinuteAgain={isMinuteAgain}
      onWholeJob={(offered) => grant({ kind: 'begin', offered, rung: 1, trainee: '' })}
      onLeave={leave}
    />
  );

  // Another page begins at its top.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the page is the very occasion
  useEffect(() => {
    scrollTo(0, 0);
  }, [place]);
  useEffect(() => {
    if (latest !== null) keepHereLast(latest.id);
  }, [latest]);
  useLayoutEffect(() => {
    const title = titleOf(path, onPage);
    if (title !== null) document.title = title;
  }, [path, onPage]);
  useEffect(() => {
    if (place !== '/attempt' && openAttempt !== null && isDueAtLeaving(openAttempt))
      setLeaving({ openAttempt, go: () => {} });
  }, [place, openAttempt]);

  return (
    <Router hook={useHashLocation}>
      <Suspense fallback={<p className="columns">Loading …</p>}>
        <Boundary key={place} what={SCREEN_NAMES[path] ?? THIS_PAGE} openAttempt={openAttempt} hasOthers>
          <Switch location={path}>
            <Route path="/attempt">
              {onPage === null ? (
                <ComingBack
                  onFound={(about) => ask((signal) => goOn(about, 'ask', signal))}
                  onNone={() => navigate('/', { replace: true })}
                />
              ) : onPage.kind === 'open' ? (
                <AttemptScreen
                  key={onPage.number}
                  openAttempt={onPage}
                  problem={problem}
                  onConcluded={letShow}
                  onAgain={(making) => {
                    const go = () => beginAs(making);
                    if (isDueAtLeaving(onPage)) setLeaving({ openAttempt: onPage, go });
                    else go();
                  }}
                />
              ) : onPage.kind === 'reading' ? (
                <ReadOnly
                  bench={onPage.bench}
                  place={onPage.place}
                  onTakeOver={() =>
                    ask((signal) => goOn(aboutOf(onPage.id, onPage.bench), 'take over', signal))
                  }
                  onReadAgain={() =>
                    ask((signal) => read(onPage.id, aboutOf(onPage.id, onPage.bench).title, signal))
                  }
                />
              ) : (
                <OpenElsewhere
                  title={onPage.title}
                  why={onPage.why}
                  onRead={() => ask((signal) => read(onPage.id, onPage.title, signal))}
                  onTakeOver={() =>
                    ask((signal) => goOn({ ...onPage, concluded: false }, 'take over', signal))
                  }
                />
              )}
            </Route>
            <Route path="/first-run">{firstRun(false)}</Route>
            <Route path="/first-minute">{firstRun(true)}</Route>
            <Route path="/shown">
              {shown === null ? (
                <Redirect to="/" />
              ) : (
                <Worked
                  offered={shown}
                  onNowYou={() => grant({ kind: 'begin', offered: shown, rung: 1, trainee: '' })}
                  onLeave={leave}
                />
              )}
            </Route>
            <Route path="/questions/:part?">
              {({ part }) => <Questions part={part} query={query} openAttempt={openAttempt} />}
            </Route>
            <Route path="/record">
              <MyRecord
                openAttempt={openAttempt}
                onOpen={(about) => ask((signal) => goOn(about, 'ask', signal))}
                onDeleted={forget}
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
            <Route path="/jobs">
              <Choose refused={refused} opened={openedFiles} openAttempt={openAttempt} onWish={grant} />
            </Route>
            <Route path="/desk/:part?">
              {({ part }) => <Desk part={part} opened={openedFiles} onWish={grant} />}
            </Route>
            <Route path={/^\/(give|collect)/}>
              <GivenAndCollected path={path} text={givenText} onBegin={beginAs} onWish={grant} />
            </Route>
            <Route path="/aim/:aim/:site?">
              {({ aim, site }) => (
                <AimStart
                  aim={aim}
                  refused={refused}
                  onLeave={() => setRefused(null)}
                  isWaiting={openAttempt !== null && isDueAtLeaving(openAttempt)}
                  onBegin={() => grant({ kind: 'begin aim', address: addressIn(aim, site, query) })}
                />
              )}
            </Route>
            <Route>
              <Home
                refused={refused}
                openAttempt={openAttempt}
                onWish={grant}
                onReturn={() => navigate('/attempt')}
              />
            </Route>
          </Switch>
          {leaving === null ? null : (
            <Leaving
              openAttempt={leaving.openAttempt}
              onLeave={() => {
                leaving.go();
                setLeaving(null);
              }}
            />
          )}
        </Boundary>
        {isTurning ? (
          <p className="turning" role="status">
            Loading …
          </p>
        ) : null}
        {isLong ? <GettingReady onCancel={cancel} /> : null}
      </Suspense>
      {failure === null ? null : (
        <Dialog title={failureTitle(failure.error, THIS_PAGE)} closeWith="Back" onClose={forgetFailure}>
          <AfterFailure error={failure.error} what={THIS_PAGE} openAttempt={openAttempt} />
        </Dialog>
      )}
    </Router>
  );
}

const aboutOf = (id: string, { run }: Bench) => ({ id, title: run.scenario.title, concluded: false });
