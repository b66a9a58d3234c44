/** What is said where the bench threw in place of doing something: why, and that nothing is lost. */
export const NotWorkedOut = ({ failed }: { readonly failed: string | null }) =>
  failed === null ? null : (
    <p className="error" role="alert">
      <strong>The bench could not work this out.</strong>
      {failed} Your attempt up to here is kept and can be exported.
    </p>
  );
