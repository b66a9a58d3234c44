// Around every test in a browser.

import { afterEach } from 'vitest';
import { settleComplaints } from './complaints.ts';

afterEach(settleComplaints);
