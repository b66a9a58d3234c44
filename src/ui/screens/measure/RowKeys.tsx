/** Rows of acts that the trainee has done singly, each as one press. */
import type { OperationInput } from '../../../bench/operation.ts';
import type { ActRow } from '../../flow/rows.ts';
import { rowText } from './rowText.ts';

interface Props {
  readonly rows: readonly ActRow[];
  readonly onDo: (...operations: readonly OperationInput[]) => void;
}

export const RowKeys = ({ rows, onDo }: Props) =>
  rows.map((row) => (
    <button key={JSON.stringify(row)} type="button" className="row-key" onClick={() => onDo(...row)}>
      <span className="note">Again: </span>
      {rowText(row)}
    </button>
  ));
