/** Pushes a panel that hangs below its button sideways until it lies within the window, 8 px from the edge. */
export function fitPanel(panel: HTMLElement): void {
  panel.style.translate = "";
  const box = panel.getBoundingClientRect();
  const room = document.documentElement.clientWidth;
  const over = Math.min(0, room - 8 - box.right);
  const under = Math.max(0, 8 - (box.left + over));
  if (over + under !== 0) panel.style.translate = `${over + under}px 0`;
}
