/** Said while a bench is got ready: what is being done, and the way out of it. */
import { Dialog } from './Dialog.tsx';

export const GettingReady = ({ onCancel }: { readonly onCancel: () => void }) => (
  <Dialog title="Getting the bench ready" closeWith="Cancel" onClose={onCancel}>
    <p role="status">What was done on it before is carried out: tests handed over, or your own …</p>
  </Dialog>
);
