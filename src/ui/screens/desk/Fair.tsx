/** Whether it is fair, in plain words; the one way out where it is not; the drawing with its places, and what each cause reads. */

import type { ReactNode } from 'react';
import { callLimit } from '../../../fairness/closest.ts';
import type { FairnessView } from '../../../fairness/view.ts';
import type { Problem } from '../../../scenario/problem.ts';
import type { Scenario } from '../../../scenario/scenario.ts';
import { applicableActions } from '../../../scenario/scenario.ts';
import { limitSum, stopWhy } from '../../../words/actions.ts';
import { amountText } from '../../../words/amounts.ts';
import { causesTitle } from '../../../words/causeTitles.ts';
import type { Answer } from '../../../words/desk.ts';
import {
  acceptText,
  aimAndTest,
  apartAnswer,
  harmAnswer,
  seenAnswer,
  testsText,
} from '../../../words/desk.ts';
import { inWords } from '../../../words/problems.ts';
import { testTitle } from '../../../words/testTitles.ts';
import type { Weighed } from '../../flow/useWeigher.ts';
import { ProblemList } from '../../parts/Problems.tsx';
import { FairTable } from './FairTable.tsx';
import { atTheirFields } from './fieldNames.ts';
import type { JobFile } from './jobFile.ts';
import { withAccepted, withAllowed } from './jobFile.ts';
import { Places } from './Places.tsx';

interface Props {
  readonly file: JobFile;
  readonly scenario: Scenario;
  readonly weighed: Weighed & { cancel: () => void; again: () => void };
  readonly onChange: (file: JobFile) => void;
}

interface FairProps extends Props {
  /** What stands, and would teach something false. */
  readonly warnings: readonly Problem[];
}

export function Fair({ warnings, ...of }: FairProps) {
  const { file, weighed } = of;
  return (
    <section className="fair stack" aria-labelledby="fair-heading">
      <div className="fair-head">
        <h2 id="fair-heading">Is it fair?</h2>
        <p role="status">{headOf(weighed)}</p>
        {weighed.is === 'working' ? (
          <button type="button" className="plain" onClick={weighed.cancel}>
            Cancel
          </button>
        ) : null}
      </div>
      <Body {...of}>
        <Warnings problems={atTheirFields(warnings, file)} />
      </Body>
    </section>
  );
}

function headOf(weighed: Weighed): string {
  switch (weighed.is) {
    case 'working':
      return weighed.soFar === null ? 'working …' : `working, ${weighed.soFar.done} of ${weighed.soFar.of}`;
    case 'weighed': {
      const { causes, tests } = weighed.view;
      return `${causes} causes × ${tests.length} tests, in ${Math.max(1, Math.round(weighed.seconds))} s`;
    }
    case 'refused':
      return 'it cannot stand as it is';
    case 'cancelled':
      return 'cancelled';
    case 'failed':
      return 'not worked out';
  }
}

interface BodyProps extends Props {
  /** What is known of the papers, however far the rest is. */
  readonly children: ReactNode;
}

function Body({ file, scenario, weighed, onChange, children }: BodyProps) {
  switch (weighed.is) {
    case 'working':
      return (
        <>
          {weighed.soFar === null ? (
            <Answers
              rows={[
                ['Can be seen:', null],
                ['Told apart:', null],
              ]}
            />
          ) : (
            <Working soFar={weighed.soFar} isSound={scenario.faults.length === 0} />
          )}
          {children}
        </>
      );
    case 'cancelled':
      return (
        <>
          <p>It was not worked out to its end.</p>
          <div className="acts">
            <button type="button" onClick={weighed.again}>
              Work it out
            </button>
          </div>
          {children}
        </>
      );
    case 'failed':
      return (
        <p role="alert">
          <strong>It could not be worked out.</strong> {weighed.why}. The draft is unchanged.
        </p>
      );
    case 'refused':
      return (
        <div role="alert" className="stack">
          <p>
            <strong>This job cannot stand as it is.</strong> Take the last change back, or mend this:
          </p>
          <ProblemList problems={inWords(atTheirFields(weighed.problems, file))} />
          <LeaveToThem file={file} scenario={scenario} problems={weighed.problems} onChange={onChange} />
        </div>
      );
    case 'weighed':
      return (
        <>
          <Answers
            rows={(
              [
                ['Can be seen:', seenAnswer(weighed.view)],
                ['Told apart:', apartAnswer(weighed.view)],
                ['Found without harm:', harmAnswer(weighed.view)],
              ] as const
            ).filter(([, answer]) => answer !== null)}
          />
          <WayOut file={file} scenario={scenario} view={weighed.view} onChange={onChange} />
          {children}
          <Places scenario={scenario} rows={weighed.view.table.rows} />
          <FairTable view={weighed.view} />
          <Facts view={weighed.view} />
        </>
      );
  }
}

/** What keeps nobody from giving it out, and would teach something false. */
const Warnings = ({ problems }: { readonly problems: readonly Problem[] }) =>
  problems.length === 0 ? null : (
    <div className="stack">
      <p>
        <strong>Worth a look before it is given out:</strong>
      </p>
      <ProblemList problems={inWords(problems)} />
    </div>
  );

/** Tests that cannot have been signed on a unit with this: one press makes them the trainee's. */
function LeaveToThem({
  file,
  scenario,
  problems,
  onChange,
}: Omit<Props, 'weighed'> & { readonly problems: readonly Problem[] }) {
  const applicable = applicableActions(scenario).map(({ id }) => id);
  const failing = problems.flatMap(({ path, message }) => {
    const [, id = ''] =
      (path === 'handover.done' && typeof message === 'string' && /^"([a-z0-9-]+)"/.exec(message)) || [];
    return applicable.includes(id) ? [id] : [];
  });
  if (failing.length === 0) return null;
  const leave = () => onChange(withAllowed(file, [...allowedOf(file, applicable), ...failing], applicable));
  return (
    <WayFrame
      title="Leave to the trainee what would have failed:"
      act={
        <button type="button" className="main" onClick={leave}>
          Leave it to them
        </button>
      }
    >
      {testsText(failing)}
    </WayFrame>
  );
}

function Working({
  soFar,
  isSound,
}: {
  readonly soFar: NonNullable<Extract<Weighed, { is: 'working' }>['soFar']>;
  readonly isSound: boolean;
}) {
  const seen: Answer | null = isSound
    ? { is: 'nothing is wrong', more: '' }
    : soFar.revealedBy === null
      ? null
      : soFar.revealedBy.length > 0
        ? { is: 'yes', more: `at ${testsText(soFar.revealedBy)}` }
        : { is: 'no', more: 'no test that is allowed shows it' };
  return (
    <Answers
      rows={[
        ['Can be seen:', seen],
        [
          'Told apart:',
          isSound ? null : soFar.alike > 0 ? { is: 'no', more: `${soFar.alike} read the same so far` } : null,
        ],
      ]}
    />
  );
}

function Answers({ rows }: { readonly rows: readonly (readonly [string, Answer | null])[] }) {
  return (
    <dl className="fair-answers">
      {rows.map(([name, answer]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>
            {answer === null ? (
              '–'
            ) : (
              <>
                <strong>{answer.is}</strong>
                {answer.more === '' ? '' : `, ${answer.more}`}
              </>
            )}
          </dd>
        </div>
      ))}
    </dl>
  );
}

/** The test that mends what is not fair; null where there is none, or nothing to mend. */
export const wayOutOf = ({ wayOut, wouldShow }: FairnessView): string | null =>
  wayOut?.test ?? wouldShow[0] ?? null;

interface WayOutProps {
  readonly file: JobFile;
  readonly scenario: Scenario;
  readonly view: FairnessView;
  readonly onChange: (file: JobFile) => void;
}

function WayOut({ file, scenario, view, onChange }: WayOutProps) {
  if (view.isSound) return null;
  const test = wayOutOf(view);
  const isUnseen = view.revealedBy.length === 0;
  const open = view.lookalikes.filter(({ accepted, splitBy }) => !accepted && splitBy.length > 0);
  const toAccept = open.filter(({ causes }) => causes.length > 0);
  if (test === null)
    return isUnseen ? (
      <WayFrame title="Make it worse, or choose another cause:">
        no test that there is shows it at this size.
      </WayFrame>
    ) : null;
  const applicable = applicableActions(scenario).map(({ id }) => id);
  const allow = () => onChange(withAllowed(file, [...allowedOf(file, applicable), test], applicable));
  const left = view.wayOut === null ? 0 : open.length - view.wayOut.splits;
  return (
    <WayFrame
      title={isUnseen ? 'Allow a test that shows it:' : 'Allow the test that splits them:'}
      act={
        <button type="button" className="main" onClick={allow}>
          Allow it
        </button>
      }
      other={
        isUnseen || toAccept.length === 0 ? null : (
          <p className="note">
            or{' '}
            <button
              type="button"
              className="plain"
              onClick={() =>
                onChange(
                  withAccepted(
                    file,
                    toAccept.flatMap(({ causes }) => causes),
                  ),
                )
              }
            >
              accept {acceptText(view.lookalikes)}
            </button>{' '}
            as the cause, full marks for each
          </p>
        )
      }
    >
      {aimAndTest(test)}
      {left > 0 ? `. It leaves ${left} that another test would split.` : ''}
    </WayFrame>
  );
}

interface FrameProps {
  readonly title: string;
  readonly children: ReactNode;
  readonly act?: ReactNode;
  readonly other?: ReactNode;
}

const WayFrame = ({ title, children, act = null, other = null }: FrameProps) => (
  <div className="way-out">
    <div>
      <p>
        <strong>{title}</strong>
        <br />
        {children}
      </p>
      {other}
    </div>
    {act}
  </div>
);

const allowedOf = ({ allowed }: JobFile, applicable: readonly string[]): readonly string[] =>
  allowed === 'all' ? applicable : allowed;

/** What else a tutor wants to know before it is given out. */
function Facts({ view }: { readonly view: FairnessView }) {
  const { minutes, shortest, closest, stopped, lookalikes, isSound } = view;
  const same = lookalikes.filter(({ causes }) => causes.length > 0);
  return (
    <dl className="told fair-facts">
      <dt>Minutes</dt>
      <dd>
        {minutes.practice} at practice, {minutes.guided} guided, {minutes['harder practice']} with lines to
        choose, for all of it
      </dd>
      {shortest === null || isSound ? null : (
        <>
          <dt>Shortest way</dt>
          <dd>
            {testsText(shortest.tests)}: {shortest.minutes} minutes
          </dd>
        </>
      )}
      {closest === null ? null : (
        <>
          <dt>Closest call</dt>
          <dd>
            {amountText(closest.value, closest.unit)} at “{testTitle(closest.action)}”, against{' '}
            {limitSum(closest.action, callLimit(closest))}
            {closest.margins < 1 ? ': too close to tell' : ''}
          </dd>
        </>
      )}
      {stopped === null ? null : (
        <>
          <dt>Ends early</dt>
          <dd>
            a faultless trainee stops at “{testTitle(stopped.action)}”:{' '}
            {stopWhy(stopped.action, stopped.line)}
          </dd>
        </>
      )}
      {same.length === 0 ? null : (
        <>
          <dt>{isSound ? 'Would not show' : 'Read the same'}</dt>
          <dd>
            {same
              .slice(0, MOST_SAME)
              .map(({ causes }) => causesTitle(causes))
              .join(' · ')}
            {same.length > MOST_SAME ? ` · and ${same.length - MOST_SAME} more` : ''}
          </dd>
        </>
      )}
    </dl>
  );
}

const MOST_SAME = 6;
