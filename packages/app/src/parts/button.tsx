import type { ReactNode } from 'react';
import { Button as AriaButton } from 'react-aria-components/Button';
import './button.css';

interface ButtonProps {
  readonly children: ReactNode;
  readonly onPress: () => void;
  /** `main`: what the screen is for; one of them. `plain`: the rest. `quiet`: no frame. */
  readonly look?: 'main' | 'plain' | 'quiet';
  readonly wide?: boolean;
  readonly isDisabled?: boolean;
  /** Name for those who do not see it, where the visible text is not enough. */
  readonly label?: string;
  readonly expanded?: boolean;
}

/** A button. It acts when the finger is lifted, and not when the finger has slid off. */
export function Button({
  children,
  onPress,
  look = 'plain',
  wide,
  isDisabled,
  label,
  expanded,
}: ButtonProps) {
  return (
    <AriaButton
      className={`button ${look}${wide ? ' wide' : ''}`}
      onPress={onPress}
      {...(isDisabled === undefined ? {} : { isDisabled })}
      {...(label === undefined ? {} : { 'aria-label': label })}
      {...(expanded === undefined ? {} : { 'aria-expanded': expanded })}
    >
      {children}
    </AriaButton>
  );
}
