/** One line as it is told: what is right folds to a row, what is wrong stands open with its place. */
import type { ReactNode } from 'react';
import type { ToldLine } from './toldLines.ts';

/** A touch opens it: reading, limit and source. */
export const RightLine = ({ line }: { readonly line: ToldLine }) => (
  <details className="right-line">
    <summary>
      <span>{line.text}</span> <span className="note">right</span>
    </summary>
    <Rows line={line} />
  </details>
);

interface Props {
  readonly line: ToldLine;
  /** What its place is called on the drawing; null where it has none. */
  readonly number: number | null;
  readonly children: ReactNode;
}

export const WrongLine = ({ line, number, children }: Props) => (
  <section className="wrong-line">
    <h4>
      {number === null ? null : <span className="circled">{number}</span>} {line.text}
    </h4>
    <Rows line={line} />
    {children}
  </section>
);

/** The rows in which a wrong answer is told; of a right one, what it rests on. */
const Rows = ({ line }: { readonly line: ToldLine }) => (
  <dl className="told-rows">
    {line.said.map(({ as, you, truth }) => (
      <Row key={as} name={as === 'said' ? 'You said' : 'You judged'}>
        {you}. <strong>True: {truth}</strong>
      </Row>
    ))}
    {line.read.length === 0 ? null : (
      <Row name="You read">
        <ul>
          {line.read.map((text, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: what is written stays where it is
            <li key={i}>{text}</li>
          ))}
        </ul>
      </Row>
    )}
    <Row name="So">{line.so}</Row>
    {line.otherwise === null || line.takeaway === null ? null : (
      <Row name="If it were faulty">you would see {line.otherwise}.</Row>
    )}
    {line.limit === null ? null : <Row name="Limit">{line.limit}</Row>}
    <Row name="Source">{line.source}</Row>
  </dl>
);

const Row = ({ name, children }: { readonly name: string; readonly children: ReactNode }) => (
  <>
    <dt>{name}</dt>
    <dd>{children}</dd>
  </>
);
