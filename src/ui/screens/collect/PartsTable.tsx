/** Marks by part, an attempt a row: whose sum is one press away, and where the class as a whole lost them. */
import { Link } from 'wouter';
import type { Class } from '../../../desk/class.ts';
import { labelOf } from '../../../desk/class.ts';
import type { Row } from '../../../desk/collect.ts';
import { visible } from '../../../scenario/quoted.ts';
import type { PartName } from '../../../scenario/tasks.ts';
import { MARKED_PARTS } from '../../../words/marksPage.ts';
import { Scroll } from '../../parts/Scroll.tsx';
import { addressOf } from './place.ts';

interface Props {
  readonly made: Class;
  readonly placeOf: (row: Row) => number;
}

const PARTS = Object.keys(MARKED_PARTS) as PartName[];

export function PartsTable({ made, placeOf }: Props) {
  const marked = made.rows.flatMap(({ row, counts }) => (row.kind === 'marked' ? [{ row, counts }] : []));
  const counted = marked.filter(({ counts }) => counts);
  return (
    <Scroll name="Marks by part">
      <table className="figures parts-table">
        <caption className="unseen">Marks by part, each out of what it is worth</caption>
        <thead>
          <tr>
            <th scope="col">label</th>
            {PARTS.map((part) => (
              <th key={part} scope="col">
                {MARKED_PARTS[part].name}
              </th>
            ))}
            <th scope="col">total</th>
          </tr>
        </thead>
        <tbody>
          {marked.map(({ row, counts }) => (
            <tr key={placeOf(row)}>
              <th scope="row">
                <Link href={addressOf(placeOf(row))}>{visible(labelOf(row))}</Link>
                {counts ? '' : <span className="note"> not counted</span>}
              </th>
              {PARTS.map((part) => (
                <td key={part}>
                  {row.marks.parts[part]} <span className="note">of {row.marks.weights[part]}</span>
                </td>
              ))}
              <td>{row.marks.total}</td>
            </tr>
          ))}
        </tbody>
        {counted.length < 2 ? null : (
          <tfoot>
            <tr>
              <th scope="row">all who count</th>
              {PARTS.map((part) => (
                <td key={part}>
                  {shareText(counted.map(({ row }) => [row.marks.parts[part], row.marks.weights[part]]))}
                </td>
              ))}
              <td>{shareText(counted.map(({ row }) => [row.marks.total, row.summary.of]))}</td>
            </tr>
          </tfoot>
        )}
      </table>
    </Scroll>
  );
}

/** Of all points that there were, how many were earned. */
function shareText(points: readonly (readonly [earned: number, of: number])[]): string {
  const of = points.reduce((sum, one) => sum + one[1], 0);
  const earned = points.reduce((sum, one) => sum + one[0], 0);
  return of === 0 ? '–' : `${Math.round((100 * earned) / of)} %`;
}
