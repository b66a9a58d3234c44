/** Everything that is wrong with a file, in words, with where in the file; and that nothing else was touched. */
import type { Problem } from '../../scenario/problems.ts';

interface Props {
  readonly file: string;
  readonly problems: readonly Problem[];
  /** What is kept as it was. */
  readonly kept: string;
}

export function Problems({ file, problems, kept }: Props) {
  return (
    <div role="alert" className="found first stack">
      <p>
        <strong>{file} was not opened.</strong> {kept}{' '}
        {problems.length === 1
          ? 'One thing is wrong with it:'
          : `${problems.length} things are wrong with it:`}
      </p>
      <ProblemList problems={problems} />
    </div>
  );
}

export function ProblemList({ problems }: { readonly problems: readonly Problem[] }) {
  return (
    <ul className="choices">
      {problems.map(({ path, message }) => (
        <li key={`${path} ${message}`}>
          {path === '' ? null : <strong>{path}: </strong>}
          {message}
        </li>
      ))}
    </ul>
  );
}
