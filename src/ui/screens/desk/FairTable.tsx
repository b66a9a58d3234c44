/** What each cause reads in the tests that matter: bold differs from what is wrong, hatched is not allowed yet. */
import { useState } from 'react';
import type { Terminal } from '../../../bench/terminals.ts';
import type { CellView, Column, FairnessView } from '../../../fairness/view.ts';
import { causePlace } from '../../../words/causes.ts';
import { causesTitle } from '../../../words/causeTitles.ts';
import { readText } from '../../../words/desk.ts';
import { terminalText } from '../../../words/terminals.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { Scroll } from '../../parts/Scroll.tsx';
import { PlaceNumber } from './Places.tsx';

export function FairTable({ view }: { readonly view: FairnessView }) {
  const { columns, rows } = view.table;
  const [isOpen, setOpen] = useState(false);
  if (columns.length === 0) return null;
  const isHatched = columns.some(({ isAllowed }) => !isAllowed);
  return (
    <div className="stack">
      <Scroll name="what each cause reads">
        <table className="fair-table">
          <thead>
            <tr>
              <th scope="col">each cause reads</th>
              {columns.map((column) => (
                <th key={column.test} scope="col" className={column.isAllowed ? '' : 'hatched'}>
                  {testTitle(column.test)}
                  {column.isAllowed ? null : <span className="unseen">, not allowed yet</span>}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ causes, of, cells }, i) => (
              <tr key={causes.join()}>
                <th scope="row">
                  <span className="place-row">
                    {of === 'sound' ? null : <PlaceNumber number={i + 1} isOwn={of === 'own'} />}
                    <span className={of === 'own' ? 'own' : ''}>
                      {of === 'sound' ? 'sound' : causesTitle(causes)}
                    </span>
                  </span>
                </th>
                {cells.map((cell, at) => {
                  const column = columns[at] as Column;
                  const differs = rows.at(-1)?.cells[at]?.differs === true && rows.at(-1)?.of === 'sound';
                  const text = cellText(cell, column, of === 'sound' ? false : differs);
                  return (
                    <td key={column.test} className={column.isAllowed ? '' : 'hatched'}>
                      {cell.differs ? <strong>{text}</strong> : text}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      <div className="acts apart">
        <p className="note">Bold: differs from 1.{isHatched ? ' Hatched: not allowed yet.' : ''}</p>
        <button type="button" className="plain" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
          {isOpen ? 'close the sums' : 'open the sums'}
        </button>
      </div>
      {isOpen ? <Sums view={view} /> : null}
    </div>
  );
}

/** `isOdd`: in this column what is wrong is told from nothing wrong, by what is seen, heard or done. */
function cellText({ value, isReached, broken, differs }: CellView, { of }: Column, isOdd: boolean): string {
  if (!isReached) return 'not come to';
  if (value !== null && of !== null) return readText(value, of.name, of.of);
  if (broken > 0) return broken === 1 ? '1 line broken' : `${broken} lines broken`;
  return isOdd && !differs ? 'not as sound' : 'in order';
}

/** Where each figure is from. */
function Sums({ view: { table } }: { readonly view: FairnessView }) {
  return (
    <dl className="told">
      {table.columns.map(({ test, of }) => (
        <div key={test} className="sum">
          <dt>{testTitle(test)}</dt>
          <dd>
            {of === null
              ? 'No figure tells them apart there: what is seen, heard or done is compared, and the lines that it breaks are counted.'
              : `The true value of ${ofText(of.of)} on a bench with that cause, in the same operations; an instrument shows it within its error, and two count as different only where their errors do not meet.`}
          </dd>
        </div>
      ))}
      {table.rows
        .filter(({ of }) => of !== 'sound')
        .map(({ causes }) => (
          <div key={causes.join()} className="sum">
            <dt>{causesTitle(causes)}</dt>
            <dd>{causes.map(causePlace).join(' ')}</dd>
          </div>
        ))}
    </dl>
  );
}

const ofText = (of: string): string => {
  const [quantity = '', ...terminals] = of.split(' ');
  return [
    quantity.replace('-', ' '),
    ...terminals
      .filter((one) => one !== '+')
      .map((one) => (one.includes('.') ? terminalText(one as Terminal) : one)),
  ].join(' ');
};
