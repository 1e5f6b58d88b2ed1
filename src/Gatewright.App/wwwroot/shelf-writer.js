// Writes what was recorded to the device's shelf, beside the page.
import { addOwnHere } from './shelf.js';

addEventListener('message', async ({ data: { number, club, texts } }) => {
  try {
    postMessage({ number, places: await addOwnHere(club, texts) });
  } catch (fault) {
    postMessage({ number, fault: fault.message });
  }
});
postMessage({ isReady: true });
