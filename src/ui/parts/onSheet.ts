/** Whether something stands on a sheet over the page: the page's own key pad lies beneath it and types nothing there. */
import { createContext } from 'react';

export const OnSheet = createContext(false);
