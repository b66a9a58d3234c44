/** The cautions that always show: one line on the first screen, the whole of them a button away everywhere. */
import { Link } from 'wouter';
import { Dialog } from './Dialog.tsx';

export const CAUTION_LINE =
  'Training only: it makes nobody competent, and its printed record is no certificate. Real work: isolate, lock off, prove dead.';

export function Cautions({
  rules,
  onClose,
}: {
  readonly rules: string | null;
  readonly onClose: () => void;
}) {
  return (
    <Dialog title="Cautions" closeWith="Back" onClose={onClose}>
      <p>
        <strong>Training only.</strong> It makes nobody competent, and its printed record is no certificate.
      </p>
      <p>
        On real work: isolate, lock off, prove dead with a proved detector, follow the maker’s instructions,
        the local wiring rules and licensed practice. Stop when unsure.
      </p>
      <p>
        Limits shown are those of the rule set and amendment named on the screen
        {rules === null ? '' : ` (${rules})`}; local codes come first.
      </p>
      <p>
        The unit, the wiring and the instruments here are simulated. Readings follow from a model; a real
        installation may do what no model does.
      </p>
      <p>
        <Link href="/first-minute">Why one pair proves nothing: the first minute</Link>
      </p>
    </Dialog>
  );
}
