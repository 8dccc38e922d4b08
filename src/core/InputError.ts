/** Why an input was refused; stable, for programs. */
export type InputErrorCode =
  /** The field is not there. */
  | 'missing'
  /** A quantity `{ value, unit }` is due and something else came. */
  | 'not-a-quantity'
  /** The number is NaN or infinite. */
  | 'not-finite'
  /** The unit is unknown or belongs to another kind of quantity. */
  | 'wrong-unit'
  /** The value lies outside what the function can answer for. */
  | 'out-of-range'
  /** Inputs that cannot hold together. */
  | 'conflict'
  /** The answer, or an input in base units, is beyond the largest double. */
  | 'too-large'
  /** Text, a list, an object or a whole number is due and something else came. */
  | 'wrong-type'
  /** A text that may mean more than one thing; `expected` names them. */
  | 'ambiguous'
  /** A field that nothing reads, such as a misspelt one. */
  | 'unknown-field';

/** Where in the input: keys and list positions from the outside in. */
export type InputPath = readonly (string | number)[];

/** One thing that is wrong with an input, as data. */
export interface InputIssue {
  /** Why, for programs. */
  readonly code: InputErrorCode;
  /** Public function that refused. */
  readonly function: string;
  /** Where in its input; empty for the input as a whole. */
  readonly path: InputPath;
  /** What would have been accepted. */
  readonly expected: string;
  /** What came. */
  readonly received: string;
}

const MARK: unique symbol = Symbol.for('coating-math/InputError') as never;

/**
 * Thrown by every function that cannot use its input. `issues` holds all that was found, at least one.
 *
 * `instanceof InputError` holds for errors of every copy of this library in a program, ESM and CJS alike.
 */
export class InputError extends RangeError {
  override readonly name = 'InputError';
  /** What is wrong, in the order in which it was found. */
  declare readonly issues: readonly [InputIssue, ...InputIssue[]];

  /** Takes what was found; the message is made from the first. */
  constructor(issues: readonly [InputIssue, ...InputIssue[]]) {
    const [first] = issues;
    super(
      `${first.function}: ${first.path.join('.') || 'input'} must be ${first.expected}, got ${first.received}`,
    );
    this.issues = issues;
  }

  /** The first of the issues. */
  get issue(): InputIssue {
    return this.issues[0];
  }

  /** Tells errors of every copy of the library. */
  get [MARK](): true {
    return true;
  }

  /** Name, message and issues: all that a log or another process needs. */
  toJSON(): { name: string; message: string; issues: readonly InputIssue[] } {
    return Object.assign({ message: this.message }, this);
  }

  /** Recognises errors of other copies of the library; a subclass recognises only its own. */
  static override [Symbol.hasInstance](value: unknown): boolean {
    return this === InputError
      ? !!(value as InputError | undefined)?.[MARK]
      : super[Symbol.hasInstance](value);
  }
}
