/** Dots for each px of the drawing: enough for print. */
const scale = 3;

/** A drawing's file as a picture. Rejects where the browser cannot draw it. */
export async function pngFile(svg: string, width_px: number, height_px: number): Promise<Blob> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await image.decode();
  const canvas = document.createElement("canvas");
  canvas.width = Math.ceil(width_px * scale);
  canvas.height = Math.ceil(height_px * scale);
  const pen = canvas.getContext("2d");
  if (!pen) throw new Error("this browser does not draw pictures");
  pen.scale(scale, scale);
  pen.drawImage(image, 0, 0, width_px, height_px);
  return new Promise((done, fail) => {
    canvas.toBlob((blob) => (blob ? done(blob) : fail(new Error("this browser does not write pictures"))), "image/png");
  });
}
