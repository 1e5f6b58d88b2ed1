// Watches for a newer program that waits beside this one, and lets it take over when somebody says so.
const often = 60 * 60 * 1000;
let registration;
let asked = false;

export async function watch(program) {
  if (!('serviceWorker' in navigator)) {
    return;
  }

  navigator.serviceWorker.addEventListener('controllerchange', () => {
    // Without being asked nothing is taken from under somebody's hands: the first visit's worker takes this page too.
    if (asked) {
      asked = false;
      location.reload();
    }
  });
  registration = await navigator.serviceWorker.ready;
  const tell = () => {
    if (registration.waiting && navigator.serviceWorker.controller) {
      program.invokeMethodAsync('Ready').catch(() => { });
    }
  };
  registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', tell));
  tell();
  let looked = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible' && Date.now() - looked > often) {
      looked = Date.now();
      registration.update().catch(() => { });
    }
  });
}

export function takeOver() {
  asked = true;
  if (registration?.waiting) {
    registration.waiting.postMessage('take over');
  } else {
    location.reload();
  }
}
