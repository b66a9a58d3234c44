/** Below the fold: site, unit and sheet, the task, what was done before, own limits, gates, time, and how it is marked. */
import { Link } from 'wouter';
import INSTALLATIONS from '../../../scenario/aimSites.json' with { type: 'json' };
import type { SiteId } from '../../../scenario/aims.ts';
import { isSite, SITES } from '../../../scenario/aims.ts';
import type { Scenario } from '../../../scenario/scenario.ts';
import { UNIT_WORDS } from '../../../words/aimJobs.ts';
import { Choice } from '../../parts/Choice.tsx';
import { Before } from './Before.tsx';
import { FieldRow } from './FieldRow.tsx';
import type { Field, FieldGroup } from './fields.ts';
import { clockFields, markFields } from './fields.ts';
import { GatesAside } from './GatesAside.tsx';
import type { JobFile } from './jobFile.ts';
import { OwnLimits } from './OwnLimits.tsx';
import { siteFields } from './siteFields.ts';
import { Task } from './Task.tsx';
import { unitFields } from './unitFields.ts';

interface Props {
  readonly file: JobFile;
  readonly scenario: Scenario;
  /** Tests that show what is wrong, as far as it is known. */
  readonly shows: readonly string[];
  readonly onChange: (file: JobFile, what?: string) => void;
}

export function MoreOfIt({ file, scenario, shows, onChange }: Props) {
  const rows = (fields: readonly Field[]) =>
    fields.map((field) => <FieldRow key={field.at} file={file} field={field} onChange={onChange} />);
  const groups = (all: readonly FieldGroup[]) =>
    all.map(({ title, fields }) => (
      <details key={title} className="fold">
        <summary>
          <h3>{title}</h3>
        </summary>
        {rows(fields)}
      </details>
    ));
  return (
    <>
      <details className="fold">
        <summary>
          <h2>Site, unit and sheet</h2>
        </summary>
        <div className="stack">
          <Choice
            label="another kind of site and unit"
            none="as it is"
            options={SITES.map((site) => [site, UNIT_WORDS[site].replace(/\.$/, '')] as const)}
            value=""
            onChange={(site) => (isSite(site) ? onChange(onSite(file, site)) : undefined)}
          />
          <p className="note">
            Learners read it in the site’s papers and on the unit’s sheet; voltage, loads and paths to true
            earth they have to find out. Earthing, phases and outlet come with the kind of site.
          </p>
          <div className="groups">
            {groups(siteFields(file))}
            {groups(unitFields(file))}
          </div>
        </div>
      </details>
      <details className="fold">
        <summary>
          <h2>The task</h2>
        </summary>
        <Task file={file} scenario={scenario} shows={shows} onChange={onChange} />
      </details>
      <details className="fold">
        <summary>
          <h2>What was done before</h2>
        </summary>
        <Before file={file} scenario={scenario} onChange={onChange} />
      </details>
      <details className="fold">
        <summary>
          <h2>A limit or value of your own</h2>
        </summary>
        <OwnLimits file={file} scenario={scenario} onChange={onChange} />
      </details>
      <details className="fold">
        <summary>
          <h2>Gates set aside</h2>
        </summary>
        <GatesAside file={file} onChange={onChange} />
      </details>
      <details className="fold">
        <summary>
          <h2>Time, and extra time</h2>
        </summary>
        <p>
          Nothing ends by the clock and time is in no mark, so nobody needs more of it than another. Waits of
          the bench last as on site, or twice as long: whoever needs extra time chooses that at the foot of
          any page. A time for the lesson stands on <Link href="/give">Give out</Link>.
        </p>
      </details>
      <details className="fold">
        <summary>
          <h2>Marks, clock and seed</h2>
        </summary>
        <div className="stack">
          <p>
            The points of the six parts come to 100 together.{' '}
            <Link href="/desk/marks">How marks are made</Link>
          </p>
          <div>{rows([...markFields(file), ...clockFields])}</div>
        </div>
      </details>
    </>
  );
}

/** Another installation, all else as it was. */
function onSite(file: JobFile, site: SiteId): JobFile {
  const { site: installation, unit, rules } = INSTALLATIONS[site];
  return { ...file, site: installation, unit, rules } as JobFile;
}
