/** Puts the page on the screen. What it shows is in ui/. */
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App, THIS_PAGE } from './ui/App.tsx';
import { serveOffline } from './ui/flow/newVersion.ts';
import { Boundary } from './ui/screens/elsewhere/Boundary.tsx';
import './ui/styles/tokens.css';
import './ui/styles/page.css';
import './ui/styles/controls.css';
import './ui/styles/aims.css';
import './ui/styles/home.css';
import './ui/styles/firstMinute.css';
import './ui/styles/bench.css';
import './ui/styles/frame.css';
import './ui/styles/steps.css';
import './ui/styles/told.css';
import './ui/styles/debrief.css';
import './ui/styles/opened.css';
import './ui/styles/drawing.css';
import './ui/styles/trace.css';
import './ui/styles/record.css';
import './ui/styles/desk.css';
import './ui/styles/collect.css';
import './ui/styles/questions.css';
import './ui/styles/print.css';

const root = document.getElementById('root');
if (root === null) throw new Error('the page has no place for the trainer');
// What stands there until the page has started, and again should nothing of it be left.
const plain = [...root.childNodes];
createRoot(root, {
  onUncaughtError: (error) => {
    root.replaceChildren(...plain);
    reportError(error);
  },
}).render(
  <StrictMode>
    <Boundary what={THIS_PAGE} openAttempt={null} hasOthers={false}>
      <App />
    </Boundary>
  </StrictMode>,
);
serveOffline();
