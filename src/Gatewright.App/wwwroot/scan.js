// Reads the code on a boat's label with the camera, where the browser knows how.
let stream;

export function canScan() {
  return 'BarcodeDetector' in globalThis && !!navigator.mediaDevices?.getUserMedia;
}

export async function scan(video, program) {
  stop();
  const mine = stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } });
  video.srcObject = mine;
  await video.play();
  const detector = new BarcodeDetector();
  while (stream === mine) {
    const found = await detector.detect(video).catch(() => []);
    if (stream === mine && found.length > 0) {
      stop();
      await program.invokeMethodAsync('Found', found[0].rawValue);
      return;
    }

    await new Promise(later => setTimeout(later, 150));
  }
}

export function stop() {
  stream?.getTracks().forEach(track => track.stop());
  stream = undefined;
}
