/** How the page can be used without a mouse, without seeing it, and with more time; and where it still falls short. */
import { Reading } from './Reading.tsx';

export function Access() {
  return (
    <Reading title="Accessibility" about="how this page can be used">
      <section className="stack prose" aria-labelledby="keys-heading">
        <h2 id="keys-heading">By keyboard</h2>
        <p>
          Everything is reached with Tab and worked with Enter or Space. While lines are being answered, keys
          1 to 3 mean should, should not and can’t tell. Nothing has to be dragged, and nothing needs two
          fingers or a quick hand.
        </p>
      </section>
      <section className="stack prose" aria-labelledby="hear-heading">
        <h2 id="hear-heading">By ear</h2>
        <p>
          Each step begins at its own heading, and the focus goes there. A reading is announced once, when it
          is held. Whatever the drawing shows stands in the lists below it as well, and whatever the unit
          indicates is said in words.
        </p>
      </section>
      <section className="stack prose" aria-labelledby="see-heading">
        <h2 id="see-heading">By eye</h2>
        <p>
          Nothing is told by colour alone. Text and lines keep a contrast of at least 4.5 and 3 to their
          ground, on light and on dark paper; high-contrast settings of the system are followed. The page can
          be enlarged to 400 % and reads in one column at 320 pixels.
        </p>
      </section>
      <section className="stack prose" aria-labelledby="time-heading">
        <h2 id="time-heading">Time</h2>
        <p>
          Bench time passes only while something is done on the bench. Nobody is timed while thinking, nothing
          asks for a quick reaction, and nothing is lost when the page is left. At the foot of each page
          stands how long a wait lasts for you: it passes at once, lasts as long as on site, or twice as long
          as extra time. A wait that lasts stands still while the page is out of sight, and can be skipped.
        </p>
      </section>
      <section className="stack prose" aria-labelledby="short-heading">
        <h2 id="short-heading">Where it falls short</h2>
        <p>
          The drawing has a short description and no more: the lists carry what it shows. The page is in
          English only. It is checked by machine against WCAG 2.2, levels A and AA, and by keyboard; it has
          not been tried by people who use screen readers every day.
        </p>
      </section>
    </Reading>
  );
}
