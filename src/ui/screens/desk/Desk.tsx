/**
 * The tutor's shelf: every job that comes with the page, with what it takes and where it shows, to be used as it is or
 * changed; one drawn by level, or begun from blank.
 */
import { Fragment, useState } from 'react';
import { Link } from 'wouter';
import FACTS from '../../../fairness/jobFacts.json' with { type: 'json' };
import type { JobFacts } from '../../../fairness/jobFacts.ts';
import type { AimId, SiteId } from '../../../scenario/aims.ts';
import { AIMS, isSite, SITES } from '../../../scenario/aims.ts';
import type { DeskDraft } from '../../../store/deskDraft.ts';
import { UNIT_WORDS } from '../../../words/aimJobs.ts';
import { AIM_WORDS } from '../../../words/aims.ts';
import { causesTitle } from '../../../words/causeTitles.ts';
import { useFailure } from '../../flow/useFailure.ts';
import { momentText } from '../../format/dates.ts';
import { AfterFailure, failureTitle } from '../../parts/AfterFailure.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { Dialog } from '../../parts/Dialog.tsx';
import { Foot } from '../../parts/Foot.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import type { Entry } from '../offered.ts';
import { keyOf } from '../offered.ts';
import { entriesWith } from '../shelf.ts';
import type { Wish } from '../wish.ts';
import { Change } from './Change.tsx';
import { DrawOne } from './DrawOne.tsx';
import { HowMarked } from './HowMarked.tsx';
import type { JobFile } from './jobFile.ts';
import { blankFile } from './jobFile.ts';
import { LEVEL_WORDS } from './levels.ts';
import { beginDraft, DRAWN, goBackTo, useDraft } from './useDraft.ts';

interface DeskProps extends Props {
  readonly part: string | undefined;
  readonly onWish: (wish: Wish) => void;
}

/** The shelf, the draft that is being changed, or how marks are made: one file of the page. */
export const Desk = ({ part, opened, onWish }: DeskProps) =>
  part === 'change' ? (
    <Change onWish={onWish} />
  ) : part === 'marks' ? (
    <HowMarked />
  ) : (
    <Shelf opened={opened} />
  );

interface Props {
  /** Scenario files opened from the device. */
  readonly opened: readonly Entry[];
}

interface Wanted {
  readonly aim: AimId | 'sound' | '';
  readonly minutes: string;
  readonly level: string;
  readonly site: SiteId | '';
}

const ANY: Wanted = { aim: '', minutes: '', level: '', site: '' };

function Shelf({ opened }: Props) {
  const drafting = useDraft();
  const { failure, fail, forget } = useFailure();
  const [wanted, setWanted] = useState(ANY);
  const begin = (file: JobFile, from: string | null, to: string) =>
    void beginDraft(file, from, to).catch(fail);
  const rows = entriesWith(opened).filter((entry) => fits(entry, wanted));
  const set = (name: keyof Wanted) => (value: string) => setWanted({ ...wanted, [name]: value } as Wanted);
  return (
    <div className="desk">
      <PageHead
        title="Set work"
        about="take a job as it is, change one thing, or have one drawn"
        takesFocus
        acts={
          <>
            <Link href="/desk/marks" className="button">
              How marks are made
            </Link>
            <Link href="/collect" className="button">
              Collect
            </Link>
          </>
        }
      />
      <main className="columns">
        <section className="stack" aria-labelledby="shelf-heading">
          <h2 id="shelf-heading">Shelf</h2>
          <div className="shelf-filters">
            <Choice
              above
              label="what it is about"
              none="anything"
              options={[
                ...AIMS.map(({ id }) => [id, AIM_WORDS[id].question] as const),
                ['sound', 'nothing wrong, or as designed'] as const,
              ]}
              value={wanted.aim}
              onChange={set('aim')}
            />
            <Choice
              above
              label="minutes"
              none="any"
              options={['10', '20', '40'].map((most) => [most, `at most ${most}`] as const)}
              value={wanted.minutes}
              onChange={set('minutes')}
            />
            <Choice
              above
              label="level"
              none="any"
              options={Object.entries(LEVEL_WORDS)}
              value={wanted.level}
              onChange={set('level')}
            />
            <Choice
              above
              label="kind of site"
              none="any"
              options={SITES.map((site) => [site, SITE_WORDS[site]] as const)}
              value={wanted.site}
              onChange={set('site')}
            />
          </div>
          <p className="note" role="status">
            {rows.length === 0
              ? 'No job on the shelf is like that. Draw one, or take one that is near and change it.'
              : `${rows.length} ${rows.length === 1 ? 'job' : 'jobs'}. This list tells what is wrong: it is for tutors.`}
          </p>
          <ul className="shelf">
            {rows.map((entry) => (
              <Row
                key={keyOf(entry)}
                entry={entry}
                onUse={() => begin(fileIn(entry), entry.scenario.title, '/give')}
                onChange={() => begin(fileIn(entry), entry.scenario.title, '/desk/change')}
              />
            ))}
          </ul>
        </section>
        <div className="wide-stack">
          {drafting === 'waiting' || drafting === null ? null : (
            <section className="stack" aria-labelledby="draft-heading">
              <h2 id="draft-heading">Your draft</h2>
              <p>
                {drafting.draft.file.title}
                <br />
                <span className="note">kept on this device, {momentText(drafting.draft.at)}</span>
              </p>
              <p className="acts">
                <Link href="/desk/change" className="button">
                  Go on with it
                </Link>
              </p>
              <PreviousDraft draft={drafting.draft} onFailed={fail} />
            </section>
          )}
          <DrawOne onDrawn={(file) => begin(file, DRAWN, '/desk/change')} />
          <Blank onBegin={(site) => begin(blankFile(site), null, '/desk/change')} />
          <p className="note">
            The last two drafts are kept. Save what you want to keep for longer as a file.
          </p>
        </div>
      </main>
      <Foot />
      {failure === null ? null : (
        <Dialog title={failureTitle(failure.error, 'The draft')} closeWith="Back" onClose={forget}>
          <AfterFailure error={failure.error} what="The draft" openAttempt={null} />
        </Dialog>
      )}
    </div>
  );
}

interface PreviousProps {
  readonly draft: DeskDraft;
  readonly onFailed: (error: unknown) => void;
}

/** The draft that was left for this one. */
function PreviousDraft({ draft, onFailed }: PreviousProps) {
  const { previous } = draft;
  if (previous === null) return null;
  return (
    <p>
      <span className="note">
        The one before it: {(previous.file as JobFile).title}, {momentText(previous.at)}{' '}
      </span>
      <button
        type="button"
        className="plain"
        onClick={() => void goBackTo(draft, '/desk/change').catch(onFailed)}
      >
        Go back to it
      </button>
    </p>
  );
}

const SITE_WORDS: Readonly<Record<SiteId, string>> = {
  'single-pme': 'single-phase, TN-C-S',
  'single-tns': 'single-phase, TN-S',
  'single-tt': 'single-phase, TT',
  'three-socket': 'three-phase, socket-outlet',
  'single-island': 'single-phase, TT at a house on PME',
  'single-shared': 'single-phase, two points on one service',
};

const fileIn = ({ scenario }: Entry): JobFile => scenario as JobFile;

/** Of a job from a file nothing was worked out yet. */
const factsOf = ({ scenario: { id }, from }: Entry): JobFacts | null =>
  from === null ? ((FACTS as unknown as Readonly<Record<string, JobFacts>>)[id] ?? null) : null;

function siteOf({ scenario: { site } }: Entry): SiteId {
  if (site.phases === 3) return 'three-socket';
  if (site.house !== undefined) return 'single-island';
  if (site.nextPoint !== undefined) return 'single-shared';
  return site.earthing === 'TN-C-S' ? 'single-pme' : site.earthing === 'TT' ? 'single-tt' : 'single-tns';
}

function fits(entry: Entry, { aim, minutes, level, site }: Wanted): boolean {
  if (site !== '' && siteOf(entry) !== site) return false;
  const facts = factsOf(entry);
  if (facts === null) return true;
  return (
    (aim === '' || (facts.aim ?? 'sound') === aim) &&
    (minutes === '' || facts.minutes <= Number(minutes)) &&
    (level === '' || facts.level === Number(level))
  );
}

interface RowProps {
  readonly entry: Entry;
  readonly onUse: () => void;
  readonly onChange: () => void;
}

function Row({ entry, onUse, onChange }: RowProps) {
  const { scenario, from } = entry;
  const facts = factsOf(entry);
  const { faults } = fileIn(entry);
  return (
    <li>
      <div>
        <p className="shelf-title">{scenario.title}</p>
        <p>{faults.length === 0 ? 'Nothing is wrong' : causesTitle(faults.map(({ fault }) => fault))}</p>
        <p className="note facts">
          {[
            ...(facts === null ? [`from ${from ?? 'a file'}`] : factsTexts(facts)),
            SITE_WORDS[siteOf(entry)],
            ...(facts === null ? [] : [`level ${facts.level}`]),
          ].map((text, i) => (
            <Fragment key={text}>
              {i === 0 ? '' : ' · '}
              <span>{text}</span>
            </Fragment>
          ))}
        </p>
      </div>
      <div className="acts">
        <button type="button" aria-label={`Use as it is: ${scenario.title}`} onClick={onUse}>
          Use as it is
        </button>
        <button type="button" aria-label={`Change one thing: ${scenario.title}`} onClick={onChange}>
          Change one thing
        </button>
      </div>
    </li>
  );
}

/** `12 min`, `shows at 2 of 6 tests`. */
const factsTexts = ({ minutes, tests, shows }: JobFacts): readonly string[] => [
  `${minutes} min`,
  shows === 0 ? `${tests} tests` : `shows at ${shows} of ${tests} tests`,
];

function Blank({ onBegin }: { readonly onBegin: (site: SiteId) => void }) {
  const [site, setSite] = useState<SiteId>('single-pme');
  return (
    <section className="stack" aria-labelledby="blank-heading">
      <h2 id="blank-heading">From blank</h2>
      <Choice
        above
        label="kind of site"
        options={SITES.map((one) => [one, SITE_WORDS[one]] as const)}
        value={site}
        onChange={(value) => (isSite(value) ? setSite(value) : undefined)}
      />
      <p className="note">{UNIT_WORDS[site]}</p>
      <div className="acts">
        <button type="button" onClick={() => onBegin(site)}>
          Begin from blank
        </button>
      </div>
    </section>
  );
}
