// Plans floors and prints them: `npm start`, `npm start -- my-floor.json`, `npm start -- --json my-floor.json`.
import { readdirSync, readFileSync } from 'node:fs';
import { InputError, planFloor } from 'coating-math';
import { planText } from './planText.mjs';

const options = process.argv.slice(2);
const asJson = options.includes('--json');
const unknown = options.find((option) => option.startsWith('-') && option !== '--json');
const paths = options.filter((option) => !option.startsWith('-'));
const folder = new URL('./floors/', import.meta.url);
const files = paths.length
  ? paths
  : readdirSync(folder)
      .filter((name) => name.endsWith('.json'))
      .sort()
      .map((name) => new URL(name, folder));

/** Ends with words instead of a stack trace. */
function refuse(...lines) {
  for (const line of lines) console.error(line);
  process.exit(2);
}

if (unknown) refuse(`${unknown}: no such option; there are --json and the path of a floor`);

const plans = files.map((file) => {
  let text;
  let document;
  try {
    text = readFileSync(file, 'utf8').replace(/^\uFEFF/, '');
  } catch (error) {
    return refuse(`${file}: cannot be read (${error.code})`);
  }
  try {
    document = JSON.parse(text);
  } catch (error) {
    return refuse(`${file}: is no JSON (${error.message})`);
  }
  try {
    return planFloor(document);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const lines = error.issues.map(
      ({ path, expected, received }) =>
        `  ${path.join('.') || 'the whole'}: expected ${expected}, got ${received}`,
    );
    return refuse(`${file}: no floor document`, ...lines);
  }
});

if (asJson) console.log(JSON.stringify(paths.length === 1 ? plans[0] : plans, null, 2));
else console.log(plans.map(planText).join('\n\n'));
