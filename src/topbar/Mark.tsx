/** The page's mark: two uprights, the rear one taller, and what they send forward. */
export function Mark() {
  return (
    <svg className="mark" viewBox="0 0 36 28" aria-hidden="true">
      <path className="mark__ground" d="M1 25.5h34" />
      <path className="mark__rear" d="M7 25V2.5" />
      <path className="mark__front" d="M15.5 25V6" />
      <path className="mark__wave" d="M21.5 20.5a6.5 6.5 0 0 0 0-9.5M26.5 23a11.5 11.5 0 0 0 0-15" />
    </svg>
  );
}
