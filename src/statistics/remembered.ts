/** A function of one number that knows its last answer: callers seldom change the number. */
export function remembered(answer: (x: number) => number): (x: number) => number {
  let [lastX, last] = [NaN, NaN];
  return (x) => {
    if (x !== lastX) [lastX, last] = [x, answer(x)];
    return last;
  };
}
