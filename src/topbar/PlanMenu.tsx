import { Icon } from "../ui/Icon.tsx";
import { Menu } from "../ui/Menu.tsx";
import { hasEarlierWork, newFromDemo, openEarlierWork, savePlan } from "./planActions.ts";

interface Props {
  onOpenFile(): void;
  onShowLink(): void;
}

export function PlanMenu({ onOpenFile, onShowLink }: Props) {
  return (
    <Menu
      title="Plan"
      end
      label={
        <>
          Plan <Icon name="down" />
        </>
      }
      items={() => [
        { label: "New from the example", icon: <Icon name="fresh" />, onChoose: newFromDemo },
        { label: "Open a plan file …", icon: <Icon name="open" />, keys: "Ctrl O", onChoose: onOpenFile },
        { label: "Save as a file", icon: <Icon name="save" />, keys: "Ctrl S", onChoose: savePlan },
        { label: "Link to this plan …", icon: <Icon name="link" />, startsGroup: true, onChoose: onShowLink },
        {
          label: "Your earlier work",
          icon: <Icon name="earlier" />,
          isDisabled: !hasEarlierWork(),
          onChoose: openEarlierWork,
        },
      ]}
    />
  );
}
