/** What every plan has to be read with: quiet, but on every view of the page. */
export function Cautions() {
  return (
    <details className="cautions">
      <summary>
        <strong>Before you build:</strong> power lines, falling masts, lightning, RF burns, exposure
      </summary>
      <ul>
        <li>
          <strong>Power lines.</strong> Choose a place where nothing, standing, being raised or falling, can touch a
          line or come near it; keep at least one and a half times the antenna’s height away. If it starts to fall
          toward a line, let go.
        </li>
        <li>
          <strong>Raising and falling.</strong> Two or more people and calm weather; guys that do not conduct or are
          broken by insulators; nobody, no path and no neighbour within the height plus a metre. Ask where pipes and
          cables lie before driving stakes.
        </li>
        <li>
          <strong>RF burns.</strong> Bases, tips and the ends of radials carry high voltage at modest power, the unfed
          wire’s too. Guard what can be touched; never adjust while transmitting.
        </li>
        <li>
          <strong>Lightning and bonding.</strong> Bond the bases, the cable’s entry and any mast to the building’s earth
          as your local code says, by a licensed electrician where the law asks for one. Do not open connections with
          storms near.
        </li>
        <li>
          <strong>Exposure to radio fields.</strong> Many licences ask you to assess it before operating. This page does
          not do that for you; consult your authority’s rules and limits.
        </li>
        <li>
          <strong>Permission.</strong> Masts, neighbours and covenants: ask locally first. Local codes and licensed
          practice come before anything shown here. The figures are a model’s: nearby metal, wet or dry soil and
          insulation change them.
        </li>
      </ul>
    </details>
  );
}
