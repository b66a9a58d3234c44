/** What leads on from the first screens: cautions over the page, and one's own record. */
import { Link } from 'wouter';

export const HeadLinks = ({ onCautions }: { readonly onCautions: () => void }) => (
  <>
    <button type="button" onClick={onCautions}>
      Cautions
    </button>
    <Link href="/record" className="button">
      My record
    </Link>
  </>
);
