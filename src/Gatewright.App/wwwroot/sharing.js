// What the page hears from outside: the network coming back, news from the server, other pages over the same shelf.
const channel = new BroadcastChannel('gatewright');
let news;

export function listen(program) {
  const tell = (name, ...given) => program.invokeMethodAsync(name, ...given).catch(() => { });
  addEventListener('online', () => tell('Woken'));
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') {
      tell('Woken');
    }
  });
  channel.onmessage = message => tell('WrittenElsewhere', message.data);
}

// What is sent, packed; nothing where this browser cannot.
export async function pack(bytes) {
  if (!globalThis.CompressionStream) {
    return null;
  }

  const packed = new Blob([bytes]).stream().pipeThrough(new CompressionStream('gzip'));
  return new Uint8Array(await new Response(packed).arrayBuffer());
}

export function tellOthers(club) {
  channel.postMessage(club);
}

// The browser opens the stream again by itself when it is cut.
export function follow(program, club) {
  news?.close();
  if (!club) {
    return;
  }

  news = new EventSource(`/api/clubs/${encodeURIComponent(club)}/news`);
  // A refusal closes the stream for good: the program is told, and asks for it anew after its next exchange.
  const opened = news;
  opened.addEventListener('error', () => {
    if (opened === news && opened.readyState === EventSource.CLOSED) {
      program.invokeMethodAsync('NewsLost').catch(() => { });
    }
  });
  news.addEventListener('grown', event => program.invokeMethodAsync('Grown', club, Number(event.data)).catch(() => { }));
}
