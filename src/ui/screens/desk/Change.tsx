/**
 * Change one thing of a job: four lines, each of which opens one panel, and beside them the drawing with whether it is
 * fair, worked out anew at every change.
 */
import { useMemo, useState } from 'react';
import { Link, Redirect } from 'wouter';
import { rungOf } from '../../../attempt/record/rung.ts';
import { warningsOf } from '../../../scenario/checks.ts';
import { givenAway } from '../../../scenario/givenAway.ts';
import type { Problem } from '../../../scenario/problem.ts';
import { check } from '../../../scenario/problems.ts';
import type { Scenario } from '../../../scenario/scenario.ts';
import { applicableActions, rightPapers, toScenario } from '../../../scenario/scenario.ts';
import { scenarioSchema } from '../../../scenario/schema.ts';
import { apartAnswer } from '../../../words/desk.ts';
import { WHY_NOT_KEPT } from '../../../words/keeping.ts';
import type { Weighed } from '../../flow/useWeigher.ts';
import { useWeighed } from '../../flow/useWeigher.ts';
import { sinceText } from '../../format/dates.ts';
import { download } from '../../parts/download.ts';
import { Foot } from '../../parts/Foot.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import type { Wish } from '../wish.ts';
import { Fair, wayOutOf } from './Fair.tsx';
import { HowBad } from './HowBad.tsx';
import type { JobFile } from './jobFile.ts';
import { asOwn, textOfFile } from './jobFile.ts';
import { MoreOfIt } from './MoreOfIt.tsx';
import type { Drafting } from './useDraft.ts';
import { useDraft } from './useDraft.ts';
import { WhatIsWrong } from './WhatIsWrong.tsx';
import { WhatTheyAreTold } from './WhatTheyAreTold.tsx';
import { WhichTests } from './WhichTests.tsx';

interface Props {
  readonly onWish: (wish: Wish) => void;
}

export function Change({ onWish }: Props) {
  const drafting = useDraft();
  if (drafting === 'waiting') return <p className="columns">Loading …</p>;
  if (drafting === null) return <Redirect to="/desk" />;
  return <Changing drafting={drafting} onWish={onWish} />;
}

/** One of the four lines is open at a time, or none. */
export type Line = 'wrong' | 'bad' | 'tests' | 'told';

function Changing({ drafting, onWish }: Props & { readonly drafting: Drafting }) {
  const { draft, change, undo, problem } = drafting;
  const { file } = draft;
  const weighed = useWeighed(file);
  const [open, setOpen] = useState<Line | null>(null);
  const read = useMemo(() => readDraft(file), [file]);
  const scenario = read?.scenario ?? null;
  const onChange = (next: JobFile, what?: string) =>
    change(draft.before.length === 0 && draft.from !== null ? asOwn(next) : next, what);
  const waits = waitsFor(weighed);
  const lineOf = (line: Line) => ({
    isOpen: open === line,
    onOpen: () => setOpen(line),
    onClose: () => setOpen(null),
    onChange,
    file,
  });
  return (
    <div className="desk">
      <PageHead
        title="Change one thing"
        about={`${draft.from === null ? 'from blank' : `from ${draft.from}`} · ${problem === null ? `draft kept on this device, ${sinceText(draft.at, Date.now())}` : 'draft not kept'}`}
        takesFocus
        acts={
          <>
            <Link href="/desk" className="button">
              Shelf
            </Link>
            <button type="button" disabled={draft.before.length === 0} onClick={undo}>
              Undo
            </button>
            <button
              type="button"
              disabled={scenario === null || weighed.is === 'refused'}
              onClick={() =>
                onWish({ kind: 'begin', offered: file, rung: rungOf(file.support, {}), trainee: '' })
              }
            >
              Try it as a trainee
            </button>
            <button type="button" onClick={() => download(`${file.id}.json`, textOfFile(file))}>
              Save the file
            </button>
          </>
        }
      />
      {problem === null ? null : (
        <p className="columns one" role="alert">
          <strong>This draft is not kept.</strong> {WHY_NOT_KEPT[problem]} Save the file before you close the
          page.
        </p>
      )}
      <main className="desk-main">
        {read === null || scenario === null ? (
          <p role="alert">
            <strong>This draft cannot be read.</strong> Take the last change back, or begin from the shelf.
          </p>
        ) : (
          <>
            <div className="four-lines">
              <WhatIsWrong {...lineOf('wrong')} scenario={scenario} />
              <HowBad {...lineOf('bad')} scenario={scenario} weighed={weighed} />
              <WhichTests {...lineOf('tests')} scenario={scenario} />
              <WhatTheyAreTold {...lineOf('told')} scenario={scenario} leaks={givenAway(scenario)} />
            </div>
            <Fair
              file={file}
              scenario={scenario}
              warnings={read.warnings}
              weighed={weighed}
              onChange={onChange}
            />
            <div className="more-of-it">
              <MoreOfIt
                file={file}
                scenario={scenario}
                shows={weighed.is === 'weighed' ? weighed.view.revealedBy : []}
                onChange={onChange}
              />
            </div>
          </>
        )}
      </main>
      <section className="desk-bar" aria-label="what is next">
        <p role="status">{waits ?? readyText(weighed)}</p>
        {waits === null ? (
          <Link href="/give" className={`button${isWayOut(weighed) ? '' : ' main'}`}>
            Give it out…
          </Link>
        ) : (
          <button type="button" disabled>
            Give it out…
          </button>
        )}
      </section>
      <Foot />
    </div>
  );
}

interface ReadDraft {
  readonly scenario: Scenario;
  /** What stands, and would teach something false. */
  readonly warnings: readonly Problem[];
}

function readDraft(file: JobFile): ReadDraft | null {
  try {
    const read = check(scenarioSchema, file);
    if (!read.ok) return null;
    const scenario = toScenario(read.value);
    // Its papers have to make sense too.
    applicableActions(scenario);
    return { scenario, warnings: warningsOf(read.value, rightPapers(scenario)) };
  } catch {
    return null;
  }
}

const isWayOut = (weighed: Weighed): boolean => weighed.is === 'weighed' && wayOutOf(weighed.view) !== null;

/** What a tutor on a phone sees of it without going down to the sums. */
function readyText(weighed: Weighed): string {
  const apart = weighed.is === 'weighed' ? apartAnswer(weighed.view) : null;
  return apart?.is === 'no' ? `It can be seen, but ${apart.more}.` : 'It can be given out.';
}

/** Why it cannot be given out yet; null: it can. What reads the same does not hinder: it is said, and marks are fair. */
function waitsFor(weighed: Weighed): string | null {
  switch (weighed.is) {
    case 'refused':
      return 'Not yet: it cannot stand as it is.';
    case 'failed':
      return 'Not yet: whether it can be seen is not known.';
    case 'cancelled':
      return 'Not yet: whether it can be seen was not worked out.';
    case 'working':
      return 'Not yet: being worked out.';
    case 'weighed':
      return weighed.view.isSound || weighed.view.revealedBy.length > 0
        ? null
        : 'Not yet: what is wrong cannot be seen.';
  }
}
