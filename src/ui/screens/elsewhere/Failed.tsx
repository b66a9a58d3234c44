/** In the place of a screen that failed or whose file did not come. */

import type { OpenAttempt } from '../../flow/useOpenAttempt.ts';
import { AfterFailure, failureTitle } from '../../parts/AfterFailure.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { useFocus } from '../../parts/useFocus.ts';

interface Props {
  readonly error: unknown;
  readonly what: string;
  readonly openAttempt: OpenAttempt | null;
  readonly hasOthers: boolean;
}

export function Failed({ error, what, openAttempt, hasOthers }: Props) {
  const heading = useFocus<HTMLHeadingElement>();
  return (
    <>
      <PageHead title="Charge point trainer" />
      <main className="columns one">
        <section className="stack prose" aria-labelledby="failed-heading">
          <h2 id="failed-heading" ref={heading} tabIndex={-1}>
            {failureTitle(error, what)}
          </h2>
          <AfterFailure error={error} what={what} openAttempt={openAttempt} />
          {hasOthers ? (
            <p>
              <a href="#/" className="lone">
                To the first page
              </a>
            </p>
          ) : null}
        </section>
      </main>
    </>
  );
}
