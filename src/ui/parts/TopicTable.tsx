/** Questions by topic: how many were right, and, where it is told, when each comes back. */
import type { ReactNode } from 'react';
import type { AimId } from '../../scenario/aims.ts';
import { AIM_WORDS } from '../../words/aims.ts';

export interface TopicRow {
  readonly topic: AimId;
  readonly right: number;
  readonly of: number;
  /** Below the topic. */
  readonly beside?: ReactNode;
  readonly back?: string;
}

interface Props {
  readonly caption: string;
  readonly rows: readonly TopicRow[];
}

export function TopicTable({ caption, rows }: Props) {
  const comesBack = rows.some(({ back }) => back !== undefined);
  return (
    <table className="by-topic">
      <caption className="unseen">{caption}</caption>
      <thead>
        <tr>
          <th scope="col">topic</th>
          <th scope="col">right</th>
          {comesBack ? <th scope="col">comes back</th> : null}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ topic, right, of, beside = null, back = '–' }) => (
          <tr key={topic}>
            <th scope="row">
              {AIM_WORDS[topic].question}
              {beside}
            </th>
            <td>
              {right} of {of}
            </td>
            {comesBack ? <td>{back}</td> : null}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
