/** An attempt that another tab holds, or has taken over or deleted: what that means, and what can be done here. */
import { navigate } from 'wouter/use-hash-location';
import { Foot } from '../../parts/Foot.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { useFocus } from '../../parts/useFocus.ts';

interface Props {
  readonly title: string;
  readonly why: 'open in another tab' | 'taken over' | 'deleted';
  readonly onRead: () => void;
  readonly onTakeOver: () => void;
}

const HEADINGS = {
  'open in another tab': 'Open in another tab',
  'taken over': 'Taken over by another tab',
  deleted: 'Deleted in another tab',
} as const;

const MEANING = {
  'open in another tab':
    'One tab at a time works on an attempt. You can look at it here as it was last kept, or take it over: the other tab then keeps nothing more.',
  'taken over': 'Another tab goes on with this attempt. This tab keeps nothing more of it.',
  deleted: 'This attempt is no longer kept on this device, and this tab keeps nothing more of it.',
} as const;

export function OpenElsewhere({ title, why, onRead, onTakeOver }: Props) {
  const heading = useFocus<HTMLHeadingElement>(why);
  return (
    <>
      <PageHead title={title} />
      <main className="columns one">
        <section className="stack prose" aria-labelledby="elsewhere-heading">
          <h2 id="elsewhere-heading" ref={heading} tabIndex={-1}>
            {HEADINGS[why]}
          </h2>
          <p>{MEANING[why]}</p>
          <div className="acts">
            {why === 'deleted' ? null : (
              <>
                <button type="button" className="main" onClick={onRead}>
                  Read only
                </button>
                <button type="button" onClick={onTakeOver}>
                  {why === 'taken over' ? 'Take it back' : 'Take it over'}
                </button>
              </>
            )}
            <button
              type="button"
              className={why === 'deleted' ? 'main' : 'plain'}
              onClick={() => navigate('/')}
            >
              To the scenarios
            </button>
          </div>
        </section>
      </main>
      <Foot />
    </>
  );
}
