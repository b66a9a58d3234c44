/** Below the fold: site, unit and sheet, what was done before, and how it is marked. */
import { Link } from 'wouter';
import INSTALLATIONS from '../../../scenario/aimSites.json' with { type: 'json' };
import type { SiteId } from '../../../scenario/aims.ts';
import { isSite, SITES } from '../../../scenario/aims.ts';
import type { Scenario } from '../../../scenario/scenario.ts';
import { allowedActions, applicableActions } from '../../../scenario/scenario.ts';
import { UNIT_WORDS } from '../../../words/aimJobs.ts';
import { Choice } from '../../parts/Choice.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { FieldRow } from './FieldRow.tsx';
import type { Field } from './fields.ts';
import { clockFields, markFields, siteFields, unitFields } from './fields.ts';
import type { JobFile } from './jobFile.ts';
import { withField } from './jobFile.ts';
import { OwnLimits } from './OwnLimits.tsx';

interface Props {
  readonly file: JobFile;
  readonly scenario: Scenario;
  readonly onChange: (file: JobFile, what?: string) => void;
}

export function MoreOfIt({ file, scenario, onChange }: Props) {
  const rows = (fields: readonly Field[]) =>
    fields.map((field) => (
      <FieldRow key={field.path.join('.')} file={file} field={field} onChange={onChange} />
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
          <h3>Site</h3>
          <div>{rows(siteFields(file))}</div>
          <h3>Unit, and what its sheet says</h3>
          <div>{rows(unitFields(file))}</div>
        </div>
      </details>
      <details className="fold">
        <summary>
          <h2>What was done before</h2>
        </summary>
        <Before file={file} scenario={scenario} onChange={onChange} />
      </details>
      <details className="fold">
        <summary>
          <h2>A limit of your own</h2>
        </summary>
        <OwnLimits file={file} scenario={scenario} onChange={onChange} />
      </details>
      <details className="fold">
        <summary>
          <h2>Marks, and the seed</h2>
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

const BY = 'a colleague, this morning';

function Before({ file, scenario, onChange }: Props) {
  const { handover } = file;
  const applicable = applicableActions(scenario).map(({ id }) => id);
  const allowed = allowedActions(scenario).map(({ id }) => id);
  return (
    <div className="stack">
      <Choice
        label="the tests that are not theirs"
        options={[
          ['none', 'are not done'],
          ['others', 'are handed over as done, with their sheet'],
          ...(handover != null && handover.done !== 'others' ? ([['some', 'as in the file']] as const) : []),
        ]}
        value={handover == null ? 'none' : handover.done === 'others' ? 'others' : 'some'}
        onChange={(value) => {
          if (value === 'some') return;
          const others = { by: handover?.by ?? BY, done: 'others' };
          // “All” would leave nothing for others to have done.
          const list = withField(file, ['allowed'], allowed.length === 0 ? applicable : allowed);
          onChange(
            value === 'others'
              ? withField(list, ['handover'], others)
              : withField(file, ['handover'], undefined),
          );
        }}
      />
      {handover == null ? null : (
        <TextField
          label="done and signed by"
          maxLength={120}
          value={handover.by}
          onChange={(by) => (by === '' ? undefined : onChange(withField(file, ['handover', 'by'], by), 'by'))}
        />
      )}
      <p className="note">
        What is handed over is carried out on the unit as it is, so its sheet may show what is wrong.
      </p>
    </div>
  );
}
