/** What is read as figures need not change oftener than an eye can read it [ms]. */
export const calmPace_ms = 200;
