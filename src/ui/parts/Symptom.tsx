/** What a customer or a colleague says, in their words: where a job begins that asks what is behind it. */
export const Symptom = ({ text }: { readonly text: string }) => (
  <p className="symptom">
    <span className="note">You were told: </span>
    <q>{text}</q>
  </p>
);
