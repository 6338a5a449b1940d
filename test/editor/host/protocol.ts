// What a test inside the editor may ask of the user's side of the screen: the messages, shared by both ends.

/** Where to look: the editor's own window, or the outputs that notebook renderers draw. */
export type Place = 'workbench' | 'outputs';

/** An element: the first visible match of a Playwright selector (CSS, `text=…`, `role=…`) in a place. */
export interface Target {
  readonly in: Place;
  readonly selector: string;
}

export type Action =
  | { readonly do: 'press'; readonly keys: string }
  | { readonly do: 'type'; readonly text: string }
  | { readonly do: 'time edits'; readonly keys: readonly string[]; readonly times: number }
  | { readonly do: 'click' | 'hover' | 'see' | 'have' | 'miss' | 'read' | 'markup'; readonly target: Target }
  | { readonly do: 'texts' | 'watch' | 'watched'; readonly target: Target }
  | { readonly do: 'focused' | 'settle' }
  | { readonly do: 'check accessibility'; readonly target: Target }
  | { readonly do: 'resize'; readonly width: number; readonly height: number }
  | { readonly do: 'screenshot'; readonly name: string }
  | { readonly do: 'print'; readonly values: readonly unknown[] };

export type Answer = { readonly value: unknown } | { readonly error: string };

/** The focused element, as a screen reader would announce it. */
export interface Focused {
  readonly place: Place;
  readonly tag: string;
  readonly role: string | null;
  readonly label: string;
}

/** An element that was there when watching began and still is. */
export interface Watched {
  /** How often something inside it, or one of its attributes, was changed. */
  readonly changes: number;
  /** Where its upper edge stood, in pixels: one place where it never moved. */
  readonly tops: readonly number[];
}

/** One broken accessibility rule, with the places that break it. */
export interface AccessibilityFault {
  readonly rule: string;
  readonly help: string;
  readonly places: readonly string[];
}

/** The user setting that tells the tests where the user's side listens. */
export const addressSetting = 'ampwrightTest.userInterface';
