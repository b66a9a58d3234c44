/** Beside the drawing of a desk: the aims of a whole job, what was found out about each, and where one is. */
import type { AimId } from '../../../scenario/aims.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { AimList } from './AimList.tsx';
import type { AskedAim } from './askedAims.ts';

interface Props {
  readonly aims: readonly AskedAim[];
  readonly open: AimId | null;
  /** The test in hand; null while one is chosen. */
  readonly test: string | null;
  readonly onOpen: ((aim: AimId | null) => void) | null;
}

/** With nothing to press in it, it can have the focus itself: keys scroll it then. */
export function Rail({ aims, open, test, onOpen }: Props) {
  return (
    <nav className="rail" aria-label="Aims of this job" tabIndex={onOpen === null ? 0 : undefined}>
      <p className="rail-head note">
        <span>{aims.length} aims</span> <span>any order</span>
      </p>
      {test === null ? (
        <AimList aims={aims} open={open} onOpen={onOpen} />
      ) : (
        <AimList aims={aims} open={open} onOpen={onOpen}>
          {({ tests }) => (
            <ul className="rail-tests">
              {tests.map(({ id }) => (
                <li key={id} aria-current={id === test ? 'step' : undefined}>
                  {testTitle(id)}
                </li>
              ))}
            </ul>
          )}
        </AimList>
      )}
    </nav>
  );
}
