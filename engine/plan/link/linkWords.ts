/**
 * Words that stand in a link as one byte, by their place here. Links out in the world depend on the order: add at the
 * end only, up to 126, and change nothing.
 */
export const linkWords: readonly string[] = [
  "format hindwire-plan version title frequency_MHz ground soilModel elements kind free-space perfect soil",
  "relativePermittivity conductivity_SPerM screen full-wave id forward_m left_m height_m diameter_mm conductor copper",
  "aluminium base fed joined loaded open current magnitude phase_deg resistance_ohm reactance_ohm radials count length_m",
  "insulation site heading_deg ituRegion band label from_MHz to_MHz interest elevation_deg rearSector_deg",
  "azimuthCutElevation_deg pins name plan baseline remark driven reflector pin-1 pin-2 pin-3 pin-4",
  "each direction_deg stake fields overlap stop bus bonded",
  "feedline cable listed own impedance_ohm velocityFactor loss loss_dBPer100m sectionId power_W swrLimit coilQ",
  "capacitorQ match pair asDrawn reversal goal front-to-back as-now load part stub",
].flatMap((line) => line.split(" "));
