/** Everything that is wrong with a file, in words, with where in the file; and that nothing else was touched. */

import type { Problem } from '../../scenario/problem.ts';
import { countOf, listed } from '../../scenario/problem.ts';
import { visible } from '../../scenario/quoted.ts';

interface Props {
  readonly file: string;
  readonly problems: readonly Problem<string>[];
  /** What is kept as it was. */
  readonly kept: string;
}

export function Problems({ file, problems, kept }: Props) {
  const count = countOf(problems);
  return (
    <div role="alert" className="found first stack">
      <p>
        <strong>{visible(file)} was not opened.</strong> {kept}{' '}
        {count === 1 ? 'One thing is wrong with it:' : `${count} things are wrong with it:`}
      </p>
      <ProblemList problems={problems} />
    </div>
  );
}

export function ProblemList({ problems }: { readonly problems: readonly Problem<string>[] }) {
  return (
    <ul className="choices">
      {listed(problems).map(({ path, message }) => (
        <li key={`${path} ${message}`}>
          {path === '' ? null : <strong>{path}: </strong>}
          {message}
        </li>
      ))}
    </ul>
  );
}
