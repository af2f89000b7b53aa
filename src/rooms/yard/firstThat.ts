/** The first of several makings that pleases, else the last; later ones are not made. */
export function firstThat<T>(makings: readonly [() => T, ...(() => T)[]], pleases: (made: T) => boolean): T {
  let made: T;
  let i = 0;
  do made = makings[i++]!();
  while (!pleases(made) && i < makings.length);
  return made;
}
