import { memo } from "react";

/** The hatching of the sector behind: lines, so that it does not rest on colour. */
export const RearHatch = memo(function RearHatch({ id }: { readonly id: string }) {
  return (
    <pattern id={id} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path className="ac-hatch" d="M0,0V7" />
    </pattern>
  );
});
