/**
 * Step three of a test: an instrument is taken, its leads go on, they are checked and applied, in two presses that are
 * the same right or wrong; then what it shows is written down, with the reading in sight. What else is done at the bench
 * is on a sheet of its own.
 */

import type { RefObject } from 'react';
import { startTransition, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { EntryOf } from '../../../attempt/record/attempt.ts';
import type { Line } from '../../../attempt/record/lines.ts';
import type { Rung } from '../../../attempt/record/rung.ts';
import type { Measurement, Operation, OperationInput } from '../../../bench/operation.ts';
import { actionNamed } from '../../../verification/actions.ts';
import type { Papers, Stage } from '../../../verification/testAction.ts';
import type { InWords } from '../../../words/actions.ts';
import { answerText } from '../../../words/answers.ts';
import { benchTime } from '../../../words/benchTime.ts';
import { applyKey, readingTitle } from '../../../words/readings.ts';
import type { Hand } from '../../drawing/hands.ts';
import { NextLead } from '../../drawing/NextLead.tsx';
import { AT_HAND, actsAtHand, once, readingsAtHand, rowsAtHand } from '../../flow/atHand.ts';
import type { Bench, Note } from '../../flow/bench.ts';
import { touchedSince } from '../../flow/leads.ts';
import type { MeasurementDraft } from '../../flow/measurement.ts';
import { draftOf, hasLeads, onlyLooks, prepared, readingsOf } from '../../flow/measurement.ts';
import { operationsBetween } from '../../flow/position.ts';
import type { ActRow, Offered } from '../../flow/rows.ts';
import { offeredNext } from '../../flow/rows.ts';
import { resetsAtHand } from '../../flow/toReset.ts';
import { useKept } from '../../flow/useKept.ts';
import type { Measuring } from '../../flow/useMeasuring.ts';
import { lastProof, perceived, runningStartDelay } from '../../flow/whatIsKnown.ts';
import { shownText } from '../../format/figures.ts';
import { BarLine } from '../../parts/BarLine.tsx';
import { Dialog } from '../../parts/Dialog.tsx';
import { NotWorkedOut } from '../../parts/NotWorkedOut.tsx';
import { takeFocus } from '../../parts/useFocus.ts';
import { Why } from '../../parts/Why.tsx';
import { HandChoices } from '../bench/HandChoices.tsx';
import { StepFrame } from '../bench/StepFrame.tsx';
import { CHOICES_OF } from '../bench/setUpRows.ts';
import type { FiguredAct } from './acts.ts';
import { actText, codingsAtHand, figuredIn, resetText, WAITS } from './acts.ts';
import type { Asked } from './Do.tsx';
import { askFor, Do, NOTHING_ASKED } from './Do.tsx';
import { Leads, Settings } from './InstrumentSettings.tsx';
import { LeadsLine, lastProvedText } from './LeadsLine.tsx';
import { RecordReading } from './RecordReading.tsx';
import { RecordRows } from './RecordRows.tsx';
import { RowKeys } from './RowKeys.tsx';
import type { Numbered, Then } from './records.ts';
import { numberedSince, recordOf, recordText } from './records.ts';
import { measurementsText, rowText } from './rowText.ts';
import { Tiles } from './Tiles.tsx';

interface Props {
  readonly bench: Bench;
  readonly papers: Papers;
  readonly test: string;
  readonly stage: Stage;
  readonly since: number;
  readonly prediction: EntryOf<'prediction'> | undefined;
  readonly lines: readonly InWords<Line>[];
  /** Whether each line’s reason can be unfolded once it is locked. */
  readonly tellsWhy: boolean;
  readonly failed: string | null;
  readonly measuring: Measuring;
  /** The rung of the attempt. */
  readonly rung: Rung;
  /** What was touched on the drawing and has more positions than two. */
  readonly hand: Hand | null;
  readonly onHand: (hand: Hand | null) => void;
  /** One act, or several as one press. */
  readonly onDo: (...operations: readonly OperationInput[]) => void;
  readonly onNote: (note: Note) => void;
  readonly onJudge: () => void;
}

/** What came of checking the leads, and of which draft: with any change it is void. */
interface Checked {
  readonly draft: MeasurementDraft;
  readonly error: string | null;
  /** Readings that were offered, in place of those that the draft makes. */
  readonly offered?: readonly Measurement[];
}

export function MeasureStep(props: Props) {
  const { bench, test, since, onNote, onDo, onJudge } = props;
  const next = nextIn(props);
  const then: Then =
    next?.kind === 'acts'
      ? {
          word: 'next',
          says: <span className="bar-next">Next in this test: {rowText(next.row)}.</span>,
          go: () => onDo(...next.row),
        }
      : { word: 'judge', go: onJudge };
  const groups = numberedSince(bench, test, since);
  const isOpen = (group: readonly Numbered[]) =>
    group.some(({ index }) => recordOf(bench.run, index) === undefined);
  /** The first reading of a group that somebody turned to; the last of the one that was set aside, which a further like reading joins. */
  const [turnedTo, setTurnedTo] = useState<number | null>(null);
  const [setAside, setSetAside] = useKept('set aside', '');
  const newest = groups.at(-1);
  const writing =
    groups.find(([first]) => first !== undefined && first.index === turnedTo) ??
    (newest !== undefined && isOpen(newest) && setAside !== lastOf(newest) ? newest : undefined);
  const leave = () => {
    setTurnedTo(null);
    if (writing !== undefined) setSetAside(lastOf(writing));
  };
  const [only] = writing ?? [];
  // Once it is written down, or left for later, the focus is back where leads are checked.
  const main = useRef<HTMLButtonElement>(null);
  const isWriting = writing !== undefined;
  const wasWriting = useRef(isWriting);
  useLayoutEffect(() => {
    if (wasWriting.current && !isWriting) takeFocus(main.current);
    wasWriting.current = isWriting;
  }, [isWriting]);
  return (
    <>
      <Announcer bench={bench} />
      {writing === undefined || only === undefined ? (
        <Leading {...props} main={main} groups={groups} next={next} onWrite={setTurnedTo} />
      ) : writing.length > 1 ? (
        <RecordRows
          key={only.index}
          run={bench.run}
          test={test}
          group={writing}
          onNote={onNote}
          onLater={leave}
          then={then}
        />
      ) : (
        <RecordReading
          key={only.index}
          run={bench.run}
          numbered={only}
          onLater={leave}
          then={then}
          onRecord={(typed) => {
            // It goes once it is written, which is drawn in slices.
            startTransition(() => setTurnedTo(null));
            onNote({ kind: 'observation', test, reading: only.index, ...typed });
          }}
        />
      )}
    </>
  );
}

const lastOf = (group: readonly Numbered[]): string => String(group.at(-1)?.index);

interface LeadingProps extends Props {
  readonly main: RefObject<HTMLButtonElement | null>;
  readonly groups: readonly (readonly Numbered[])[];
  /** On the first rung: what comes next by the test's own steps. */
  readonly next: Offered | null;
  /** To the reading with this number, to write it down or to correct it. */
  readonly onWrite: (index: number) => void;
}

function Leading(props: LeadingProps) {
  const { bench, papers, prediction, lines, tellsWhy, failed, measuring, groups } = props;
  const { main, onWrite, onDo, onJudge, hand, onHand } = props;
  const touched = hand === null ? undefined : CHOICES_OF[hand];
  const { draft, set } = measuring;
  const [check, setCheck] = useState<Checked | null>(null);
  const [isActing, setActing] = useState(false);
  const [asked, setAsked] = useKept<Asked>('act', NOTHING_ASKED);
  // Whoever puts leads on by the list finds it open the next time.
  const [isListed, setListed] = useKept('leads listed', '');
  const apply = useRef<HTMLButtonElement>(null);
  const ready = prepared(draft);
  const valid = check !== null && check.draft === draft ? check : null;
  const readings = valid?.offered ?? readingsOf(draft, papers.site);
  const [first] = readings;
  const checked = valid !== null && valid.error === null;
  // The next step stands where the button was: the focus goes on to it.
  useLayoutEffect(() => {
    if (checked) takeFocus(apply.current);
  }, [checked]);
  const startDelay = runningStartDelay(bench);
  const rows = useMemo(() => rowsAtHand(bench), [bench]);
  const take = (measurements: readonly Measurement[]) => {
    // It goes with this press, and to take the focus from what is gone costs the page a second layout.
    apply.current?.blur();
    setCheck(null);
    onDo(...measurements);
  };
  const onlyReads = onlyLooks(draft.instrument);
  const onMain = () => {
    if (onlyReads && ready.ok) return take(readings);
    setCheck({ draft, error: ready.ok ? null : ready.missing });
  };
  const onOffered = (measurements: readonly Measurement[]) => {
    const shown = draftOf(measurements, draft, papers.site);
    set(shown);
    if (onlyLooks(shown.instrument)) take(measurements);
    // What is set is what was checked: the same draft.
    else setOffered(measurements);
  };
  const [offered, setOffered] = useState<readonly Measurement[] | null>(null);
  useEffect(() => {
    if (offered === null) return;
    setCheck({ draft, error: null, offered });
    setOffered(null);
  }, [offered, draft]);
  const bar =
    touched !== undefined ? (
      <HandChoices
        row={touched}
        when="now"
        position={bench.position}
        now={bench.position}
        onChoose={(change) => {
          const to = { ...bench.position, ...change };
          onDo(...operationsBetween(bench.position, to, 0, papers.sheet.outlet));
        }}
        onClose={() => onHand(null)}
      />
    ) : checked && first !== undefined ? (
      <>
        <p className="bar-line">
          <LeadsLine draft={draft} /> {readings.length > 1 ? `and so on: ${readings.length} readings. ` : ''}
          <span className="note">{lastProvedText(bench, draft)}</span>
        </p>
        <div className="bar-acts">
          <button type="button" onClick={() => setCheck(null)}>
            Move a lead
          </button>
          <button ref={apply} type="button" className="main" onClick={() => take(readings)}>
            {applyKey(first)}
            {readings.length > 1 ? `, then ${readings.length - 1} more` : ''}
          </button>
        </div>
      </>
    ) : (
      <>
        <BarLine refused={valid?.error == null ? null : { what: 'Not yet.', why: valid.error }}>
          {draft.instrument === '' ? (
            'Take an instrument, then touch two terminals.'
          ) : (
            <LeadsLine draft={draft} />
          )}
        </BarLine>
        <div className="bar-acts">
          <button type="button" aria-haspopup="dialog" onClick={() => startTransition(() => setActing(true))}>
            Do…
          </button>
          <button type="button" onClick={onJudge}>
            Judge
          </button>
          <button ref={main} type="button" className="main" onClick={onMain}>
            {onlyReads ? (readings.length > 1 ? `Read ${readings.length} pairs` : 'Read') : 'Check leads'}
          </button>
        </div>
      </>
    );
  return (
    <StepFrame bar={bar}>
      <NotWorkedOut failed={failed} />
      <ResetKeys bench={bench} papers={papers} onDo={onDo} />
      <Tiles stage={props.stage} value={draft.instrument} onTake={(instrument) => set({ instrument })} />
      <Settings draft={draft} site={papers.site} set={set} />
      <NextStep {...props} onOffered={onOffered} />
      <WaitKeys startDelay={startDelay} onDo={onDo} />
      <NextLead measuring={measuring} touched={touchedSince(bench.happened, props.since)} />
      <AtHand
        {...props}
        rows={rows}
        onOffered={onOffered}
        onAsk={(act) => {
          setAsked(askFor(act));
          startTransition(() => setActing(true));
        }}
      />
      <Noticed bench={bench} since={props.since} />
      {hasLeads(draft.instrument) ? (
        <details
          open={isListed === 'yes'}
          onToggle={({ currentTarget }) => setListed(currentTarget.open ? 'yes' : '')}
        >
          <summary className="note">Leads, in a list</summary>
          <Leads draft={draft} site={papers.site} set={set} />
        </details>
      ) : null}
      <Written bench={bench} groups={groups} onWrite={onWrite} />
      {prediction === undefined ? null : <Said prediction={prediction} lines={lines} tellsWhy={tellsWhy} />}
      {isActing ? (
        <Dialog title="Do at the bench" closeWith="Back to the readings" onClose={() => setActing(false)}>
          <Do
            papers={papers}
            asked={asked}
            onAsk={setAsked}
            lastProof={lastProof(bench)}
            rows={rows}
            onDo={(...operations) => {
              setActing(false);
              onDo(...operations);
            }}
          />
        </Dialog>
      ) : null}
    </StepFrame>
  );
}

/** On the first rung what comes next by the test's own steps; null above it, and where nothing is left of them. */
function nextIn({ rung, test, bench, papers, since }: Props): Offered | null {
  const action = actionNamed(test);
  if (rung !== 1 || action === undefined) return null;
  return offeredNext(action, papers, doneSince(bench, since));
}

const doneSince = ({ happened }: Bench, since: number): readonly Operation[] =>
  happened.filter(({ entry }) => entry > since).map(({ operation }) => operation);

interface OfferedProps extends LeadingProps {
  readonly onOffered: (measurements: readonly Measurement[]) => void;
}

/** What comes next, as one press; anything else can be done as well. */
function NextStep({ next, onDo, onOffered }: OfferedProps) {
  if (next === null) return null;
  return (
    <button
      type="button"
      className="row-key"
      onClick={() => (next.kind === 'acts' ? onDo(...next.row) : onOffered(next.measurements))}
    >
      <span className="note">next in this test: </span>
      {next.kind === 'acts' ? rowText(next.row) : measurementsText(next.measurements)}
    </button>
  );
}

/** What the trainee has done in this job, each to be done again by one press, and what takes back what stands. */
function AtHand({
  bench,
  papers,
  since,
  rows,
  onDo,
  onOffered,
  onAsk,
}: OfferedProps & { readonly rows: readonly ActRow[]; readonly onAsk: (act: FiguredAct) => void }) {
  const { happened, position } = bench;
  const readings = useMemo(() => readingsAtHand(bench).slice(0, AT_HAND.readings), [bench]);
  const acts = useMemo(
    () =>
      once([
        ...codingsAtHand(papers, position),
        ...actsAtHand(happened, position).slice(0, AT_HAND.acts),
      ]).map((act) => [act, actText(act, papers)] as const),
    [happened, position, papers],
  );
  const figured = figuredIn(doneSince(bench, since), papers);
  return (
    <>
      {readings.map((measurements) => (
        <button
          key={JSON.stringify(measurements)}
          type="button"
          className="row-key"
          onClick={() => onOffered(measurements)}
        >
          <span className="note">Again: </span>
          {measurementsText(measurements)}
        </button>
      ))}
      <RowKeys rows={rows.slice(0, AT_HAND.rows)} onDo={onDo} />
      {acts.length + figured.length === 0 ? null : (
        <div className="wait-keys">
          {figured.map((act) => (
            <button key={act.name} type="button" onClick={() => onAsk(act)}>
              {act.text} …
            </button>
          ))}
          {acts.map(([act, text]) => (
            <button key={JSON.stringify(act)} type="button" aria-label={text} onClick={() => onDo(act)}>
              {text.replace(/^(stand-in|press|disturbance): /, '')}
            </button>
          ))}
        </div>
      )}
    </>
  );
}

/** Reset and wait by one press, where something was heard to trip or the unit says so. */
function ResetKeys({ bench, papers, onDo }: Pick<Props, 'bench' | 'papers' | 'onDo'>) {
  const resets = resetsAtHand(bench);
  if (resets.length === 0) return null;
  return (
    <div className="reset-keys">
      {resets.map((row) => (
        <button key={JSON.stringify(row)} type="button" onClick={() => onDo(...row)}>
          {resetText(row, papers)}
        </button>
      ))}
    </div>
  );
}

/** A wait by one press, and the one that the unit’s sheet speaks of while it may be running. */
function WaitKeys({ startDelay, onDo }: { readonly startDelay: number | null } & Pick<Props, 'onDo'>) {
  const key = (seconds: number) => (
    <button key={seconds} type="button" onClick={() => onDo({ op: 'wait', seconds })}>
      Wait {seconds} s
    </button>
  );
  return (
    <div className="wait-keys">
      {WAITS.filter((seconds) => seconds !== startDelay).map(key)}
      {startDelay === null ? null : (
        <>
          <span>
            Starts within {startDelay} s <span className="note">by the unit’s sheet</span>
          </span>
          {key(startDelay)}
        </>
      )}
    </div>
  );
}

const SHOWN = 3;

/** What was seen and heard since the lock, the last of it in sight. */
function Noticed({ bench, since }: { readonly bench: Bench; readonly since: number }) {
  const first = bench.happened.findIndex(({ entry }) => entry > since);
  const noticed = first < 0 ? [] : perceived(bench.happened, first);
  const row = ({ at, text, heavy }: (typeof noticed)[number], i: number) => (
    <li key={i}>
      {benchTime(at)} {heavy ? <strong>{text}</strong> : text}
    </li>
  );
  const before = noticed.slice(0, -SHOWN);
  return (
    <section aria-labelledby="noticed-heading">
      <h3 id="noticed-heading" className="lettering">
        seen and heard since you locked
      </h3>
      {before.length === 0 ? null : (
        <details className="note">
          <summary>{before.length} before</summary>
          <ul className="choices note">{before.map(row)}</ul>
        </details>
      )}
      {noticed.length === 0 ? (
        <p className="note">nothing</p>
      ) : (
        <ul className="choices note">{noticed.slice(-SHOWN).map((one, i) => row(one, before.length + i))}</ul>
      )}
    </section>
  );
}

interface WrittenProps extends Pick<LeadingProps, 'groups' | 'onWrite'> {
  readonly bench: Bench;
}

/** The readings of this test, each with what was written of it, or that nothing was. */
function Written({ bench, groups, onWrite }: WrittenProps) {
  if (groups.length === 0) return null;
  return (
    <section aria-labelledby="written-heading">
      <h3 id="written-heading" className="lettering">
        readings
      </h3>
      <ul className="choices written">
        {groups.map(([first, ...others]) => {
          if (first === undefined) return null;
          const records = [first, ...others].flatMap(({ index }) => recordOf(bench.run, index) ?? []);
          const isWhole = records.length === 1 + others.length;
          const title =
            others.length > 0
              ? `${others.length + 1} readings, ${readingTitle(first.reading)} and so on`
              : readingTitle(first.reading);
          return (
            <li key={first.index}>
              <span className="note">{title}</span>
              <strong>{records.map(recordText).join('; ')}</strong>
              <button type="button" className="plain" onClick={() => onWrite(first.index)}>
                {isWhole ? 'Correct it' : 'Write it down'}
                <span className="unseen">: {title}</span>
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

interface SaidProps {
  readonly prediction: EntryOf<'prediction'>;
  readonly lines: readonly InWords<Line>[];
  readonly tellsWhy: boolean;
}

/** What was locked, to be unfolded while the readings come in. */
function Said({ prediction, lines, tellsWhy }: SaidProps) {
  const { at, sure, given } = prediction;
  return (
    <details className="note">
      <summary>
        locked {benchTime(at)}
        {given ? ': what was given' : `${sure === null ? '' : `, ${sure} sure`}: what you said`}
      </summary>
      <ul className="choices">
        {prediction.lines.map(({ id, answer }) => (
          <li key={id}>
            {lines.find((line) => line.id === id)?.text ?? id}: <strong>{answerText(answer)}</strong>
            {tellsWhy ? <Why line={lines.find((line) => line.id === id)} /> : null}
          </li>
        ))}
      </ul>
    </details>
  );
}

/** Says each new reading, and each thing seen or heard, once. Its number and time make it new where all else is as before. */
function Announcer({ bench }: { readonly bench: Bench }) {
  const [before] = useState(bench.happened.length);
  const [text, setText] = useState('');
  const last = bench.happened.at(-1);
  const count = bench.happened.length;
  useEffect(() => {
    if (count <= before || last === undefined) return;
    const { readings } = last.outcome;
    const numbered = bench.run.readings.length - readings.length + 1;
    const held = readings.map((r, i) => `Reading ${numbered + i}: ${readingTitle(r)}: ${shownText(r)}`);
    const noticed = perceived(bench.happened, count - 1).map((p) => p.text);
    setText([...held, ...noticed].join('. ') || `Done, ${benchTime(last.at)}. Nothing seen or heard.`);
  }, [count, before, last, bench]);
  return (
    <p role="status" className="unseen">
      {text}
    </p>
  );
}
