import { type ReactNode, useId } from "react";

interface Props {
  readonly name: string;
  /** A few words at the right of the name: what can be done here, or what is drawn. */
  readonly aside?: ReactNode;
  /** Where the page's grid puts it. */
  readonly place: string;
  readonly children: ReactNode;
}

/** One sheet of the page, with its name. */
export function Room({ name, aside, place, children }: Props) {
  const id = useId();
  return (
    <section className={`sheet room room--${place}`} aria-labelledby={id}>
      <header className="room__head">
        <h2 className="room__name" id={id}>
          {name}
        </h2>
        {aside && <p className="room__aside">{aside}</p>}
      </header>
      {children}
    </section>
  );
}
