import { settingsStore, type Theme, type Units, useSettings } from "../store/useSettings.ts";
import { Icon } from "../ui/Icon.tsx";
import { Popover } from "../ui/Popover.tsx";
import { Switch } from "../ui/Switch.tsx";

const themes: readonly { value: Theme; label: string }[] = [
  { value: "auto", label: "Auto" },
  { value: "light", label: "Light" },
  { value: "dark", label: "Dark" },
  { value: "projector", label: "Projector" },
];
const unitSystems: readonly { value: Units; label: string }[] = [
  { value: "metric", label: "Metres" },
  { value: "imperial", label: "Feet, inches" },
];

/** How the page looks and measures: kept in this browser, no part of a plan. */
export function ViewPanel() {
  const theme = useSettings((s) => s.theme);
  const units = useSettings((s) => s.units);
  return (
    <Popover
      title="View"
      isTitleShown={false}
      end
      label={
        <>
          View <Icon name="down" />
        </>
      }
    >
      {() => (
        <>
          <Switch
            label="Lengths in"
            choices={unitSystems}
            value={units}
            onChange={(value) => settingsStore.setState({ units: value })}
          />
          <Switch
            label="Colours"
            choices={themes}
            value={theme}
            onChange={(value) => settingsStore.setState({ theme: value })}
          />
          <p className="soft">Auto follows this computer. Projector has strong contrast and larger type for a room.</p>
        </>
      )}
    </Popover>
  );
}
