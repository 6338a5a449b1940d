// The user's hands and eyes, for tests that run inside the editor: keys, mouse, what is on the screen, pictures of it.
import * as vscode from 'vscode';
import {
  type AccessibilityFault,
  type Action,
  type Answer,
  addressSetting,
  type Focused,
  type Target,
  type Watched,
} from '../host/protocol.ts';

const address = (): string | undefined => vscode.workspace.getConfiguration().get<string>(addressSetting);

/** Whether someone sits at this editor; a desktop editor runs the tests without one. */
export const available = (): boolean => address() !== undefined;

/** For tests that need someone at the editor; elsewhere they are left out. */
export const atTheScreen = () => (available() ? { describe, it } : { describe: xdescribe, it: xit });

async function user(action: Action): Promise<unknown> {
  const response = await fetch(address()!, { method: 'POST', body: JSON.stringify(action) });
  const answer = (await response.json()) as Answer;
  if ('error' in answer) throw new Error(answer.error);
  return answer.value;
}

const inOutputs = (selector: string): Target => ({ in: 'outputs', selector });
const inWorkbench = (selector: string): Target => ({ in: 'workbench', selector });
export const target = { outputs: inOutputs, workbench: inWorkbench };

/** Presses a key or chord, as `Control+S`, wherever the focus is. */
export const press = async (keys: string): Promise<void> => void (await user({ do: 'press', keys }));
export const typeText = async (text: string): Promise<void> => void (await user({ do: 'type', text }));
/** Presses the keys in turn, each an edit that changes results; the milliseconds from each key until the new results are painted. */
export const timeEdits = async (keys: readonly string[], times: number): Promise<number[]> =>
  (await user({ do: 'time edits', keys, times })) as number[];
export const click = async (target: Target): Promise<void> => void (await user({ do: 'click', target }));
export const hover = async (target: Target): Promise<void> => void (await user({ do: 'hover', target }));
/** Waits until something matches and is visible; `have` until it is there at all, `miss` until nothing visible matches. */
export const see = async (target: Target): Promise<void> => void (await user({ do: 'see', target }));
export const have = async (target: Target): Promise<void> => void (await user({ do: 'have', target }));
export const miss = async (target: Target): Promise<void> => void (await user({ do: 'miss', target }));
/** The text of the first match as it is laid out, with plain spaces, once there is one. */
export const read = async (target: Target): Promise<string> => (await user({ do: 'read', target })) as string;
export const markup = async (target: Target): Promise<string> => (await user({ do: 'markup', target })) as string;
/** The texts of all visible matches at this moment, which may be none. */
export const texts = async (target: Target): Promise<string[]> => (await user({ do: 'texts', target })) as string[];
/** Begins to watch every visible match; `watched` tells of those that are still there, and ends it. */
export const watch = async (target: Target): Promise<void> => void (await user({ do: 'watch', target }));
export const watched = async (target: Target): Promise<Watched[]> => (await user({ do: 'watched', target })) as Watched[];
/** All that the outputs of the notebook in front show. */
export const webviewText = async (): Promise<string> => (await texts(inOutputs('.output_container'))).join('\n');
export const focused = async (): Promise<Focused> => (await user({ do: 'focused' })) as Focused;
export const accessibilityFaults = async (target: Target): Promise<AccessibilityFault[]> =>
  (await user({ do: 'check accessibility', target })) as AccessibilityFault[];
/** Waits until the frames of outputs have all that they asked the server for. */
export const settle = async (): Promise<void> => void (await user({ do: 'settle' }));
export const resize = async (width: number, height: number): Promise<void> => void (await user({ do: 'resize', width, height }));
/** A picture of the whole window, `test-artifacts/HOST/NAME.png`, where someone sits at it. */
export const screenshot = async (name: string): Promise<void> => void (available() && (await user({ do: 'screenshot', name })));

const pictured = new Set<Mocha.Test>();

/** A picture of what the user sees when the current test has failed; the first one counts, taken before anything is tidied up. */
export async function pictureOfFailure({ currentTest: test }: Mocha.Context): Promise<void> {
  if (test?.state !== 'failed' || pictured.has(test) || !available()) return;
  pictured.add(test);
  await screenshot(`failed ${test.fullTitle()}`.replace(/[^\w ]/g, '').slice(0, 100));
}

/** Prints a line on the runner's standard output, formatted as `console.log` does. */
export const print = async (...values: unknown[]): Promise<void> => void (await user({ do: 'print', values }));

const themes = {
  light: ['Default Light Modern', '.monaco-workbench.vs'],
  dark: ['Default Dark Modern', '.monaco-workbench.vs-dark'],
  'high contrast': ['Default High Contrast', '.monaco-workbench.hc-black'],
  'high contrast light': ['Default High Contrast Light', '.monaco-workbench.hc-light'],
} as const;

/** Switches the colour theme and waits until the window shows it. */
export async function theme(name: keyof typeof themes): Promise<void> {
  const [label, shown] = themes[name];
  await vscode.workspace.getConfiguration('workbench').update('colorTheme', label, vscode.ConfigurationTarget.Global);
  await see(inWorkbench(shown));
}

export type { AccessibilityFault, Focused, Target };
