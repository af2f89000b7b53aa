import type { ComponentPropsWithRef, ReactNode } from "react";

interface Props extends ComponentPropsWithRef<"button"> {
  /** "hot" for the one step the page hopes for; "quiet" for what should not compete. */
  readonly look?: "plain" | "hot" | "quiet";
  readonly icon?: ReactNode;
  /** A button with only an icon: `aria-label` must then say what it does. */
  readonly isIconOnly?: boolean;
}

export function Button({ look = "plain", icon, isIconOnly = false, className = "", children, ...rest }: Props) {
  const classes = ["button", look !== "plain" && `button--${look}`, isIconOnly && "button--icon", className];
  return (
    <button type="button" className={classes.filter(Boolean).join(" ")} {...rest}>
      {icon}
      {children}
    </button>
  );
}
