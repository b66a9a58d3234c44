/** Before something is deleted: what it is, and two buttons that say what they do. */
import type { ReactNode } from 'react';
import { Dialog } from '../../parts/Dialog.tsx';

interface Props {
  readonly title: string;
  readonly keepWord: string;
  readonly deleteWord: string;
  readonly onKeep: () => void;
  readonly onDelete: () => void;
  readonly children: ReactNode;
}

export function DeleteDialog({ title, keepWord, deleteWord, onKeep, onDelete, children }: Props) {
  return (
    <Dialog title={title} closeWith={keepWord} onClose={onKeep}>
      {children}
      <button type="button" className="strong" onClick={onDelete}>
        {deleteWord}
      </button>
    </Dialog>
  );
}
