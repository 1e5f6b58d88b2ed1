// The picture chosen in a field, small enough for a shed's network: a JPEG, its longer side at most so many pixels.
// Nothing where none was chosen; no bytes where the browser can make no picture of it.
export async function picture(input, most) {
  const file = input.files[0];
  input.value = '';
  if (!file) {
    return null;
  }

  const drawn = await createImageBitmap(file);
  const scale = Math.min(1, most / Math.max(drawn.width, drawn.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(drawn.width * scale));
  canvas.height = Math.max(1, Math.round(drawn.height * scale));
  canvas.getContext('2d').drawImage(drawn, 0, 0, canvas.width, canvas.height);
  drawn.close();
  const blob = await new Promise(done => canvas.toBlob(done, 'image/jpeg', 0.82));
  return new Uint8Array(blob ? await blob.arrayBuffer() : []);
}
