/** Which jobs are given out: from those that come with the page, or from files of the tutor's own. */
import { useState } from 'react';
import type { Problem } from '../../../scenario/problems.ts';
import { parseScenario } from '../../../scenario/scenarioText.ts';
import { inWords } from '../../../words/problems.ts';
import { Choice } from '../../parts/Choice.tsx';
import { OpenFile } from '../../parts/OpenFile.tsx';
import { Problems } from '../../parts/Problems.tsx';
import type { Offered } from '../offered.ts';
import { unitLine } from '../offered.ts';
import { OFFERED } from '../shelf.ts';

interface Props {
  readonly jobs: readonly object[];
  readonly onChange: (jobs: readonly object[]) => void;
}

const MOST = 20;

export function JobsChosen({ jobs, onChange }: Props) {
  const [refused, setRefused] = useState<{ name: string; problems: readonly Problem[] } | null>(null);
  const all = jobs as readonly Offered[];
  const others = OFFERED.filter(({ id }) => all.every((job) => job.id !== id));
  const add = (job: object) => {
    const { id } = job as Offered;
    setRefused(null);
    onChange([...all.filter((one) => one.id !== id), job].slice(-MOST));
  };
  const open = async (file: File) => {
    const read = parseScenario(await file.text());
    if (read.ok) add(read.file as object);
    else setRefused({ name: file.name, problems: read.problems });
  };
  return (
    <section className="stack" aria-labelledby="jobs-heading">
      <h2 id="jobs-heading">{jobs.length < 2 ? 'The job' : `A set of ${jobs.length} jobs`}</h2>
      {jobs.length === 0 ? null : (
        <ol className="attempt-rows">
          {all.map((job) => (
            <li key={job.id}>
              <div>
                <strong>{job.title}</strong> <span className="note">{unitLine(job)}</span>
              </div>
              <button
                type="button"
                className="plain"
                onClick={() => onChange(all.filter(({ id }) => id !== job.id))}
              >
                Take out <span className="unseen">{job.title}</span>
              </button>
            </li>
          ))}
        </ol>
      )}
      {jobs.length >= MOST ? null : (
        <Choice
          label={jobs.length === 0 ? 'a job that comes with the page' : 'another one, as a set'}
          above
          none="choose …"
          options={others.map((job) => [job.id, `${job.title} (${unitLine(job)})`] as const)}
          value=""
          onChange={(id) => {
            const job = OFFERED.find((one) => one.id === id);
            if (job !== undefined) add(job);
          }}
        />
      )}
      <OpenFile label="A job from a file…" onFile={(file) => void open(file)} />
      {refused === null ? null : (
        <Problems
          file={refused.name}
          problems={inWords(refused.problems)}
          kept="The jobs chosen are unchanged."
        />
      )}
    </section>
  );
}
