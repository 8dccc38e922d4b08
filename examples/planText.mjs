// A plan as lines of text. Behind each figure stands the function that computed it.
import { formatQuantity } from 'coating-math/units';
import { cautionText } from 'coating-math/messages';

const locale = 'en-US';

/** A quantity to the digits that make sense on a site. */
const q = (quantity, significantDigits = 4) => formatQuantity({ quantity, locale, significantDigits });
/** A figure rounded for the field, as it is read off. */
const field = ({ field: quantity }) => formatQuantity({ quantity, locale });
/** A mark on a stick: in fractions of an inch, or as a plain figure. */
const mark = ({ field: quantity, step }) =>
  quantity.unit === 'in' && Number.isInteger(1 / step.value)
    ? formatQuantity({ quantity, locale, denominator: 1 / step.value })
    : field({ field: quantity });
/** A share to a tenth of a per cent. */
const tenths = (quantity) => formatQuantity({ quantity, locale, decimals: 1 });
/** Low, likely and high; one figure where they are the same. */
const range = ({ low, likely, high }) => {
  const ends = [low, likely, high].map((end) => q(end));
  return new Set(ends).size === 1 ? ends[0] : ends.join(' / ');
};
/** So many of a thing. */
const many = (number, one, more) => `${number} ${number === 1 ? one : more}`;
/** A line of two columns and its source. */
const line = (label, text, id) => `  ${label.padEnd(30)}${text}${id ? `   [${id}]` : ''}`;
const heading = (text) => `\n${text}\n${'-'.repeat(text.length)}`;

const TREATMENT = { added: '+', deducted: '−', 'left-in': '·' };
const REASON = {
  'at-least-deduct-from': 'deducted: at least the deduct-from size',
  'below-deduct-from': 'left in: below the deduct-from size',
  'no-deduct-from': 'deducted: no deduct-from size is stated',
};

function zoneLines({ name, takeOff }) {
  const { gross, deducted, net, perimeter, edges, items } = takeOff;
  const isMetric = /^[a-z]?m2$/.test(net.unit);
  const both = ({ us, metric }) => (isMetric ? [metric, us] : [us, metric]).map((one) => q(one)).join(' = ');
  const pieces = items.map((item) => {
    const times = item.count > 1 ? ` × ${item.count}` : '';
    const why = item.reason ? `  ${REASON[item.reason]}` : '';
    return line(`  ${TREATMENT[item.treatment]} ${item.name}${times}`, q(item.area), 'area.takeOff') + why;
  });
  return [
    name,
    ...pieces,
    ...(deducted.value > 0 ? [line('gross − deducted', `${q(gross)} − ${q(deducted)}`, 'area.takeOff')] : []),
    line('to be coated', q(net), 'area.takeOff'),
    ...(perimeter ? [line('perimeter', both(perimeter), 'area.takeOff')] : []),
    ...(edges ? [line('edges to cut in', both(edges), 'area.takeOff')] : []),
  ];
}

const LOSS = {
  texture: 'drunk by the texture',
  porosity: 'drunk by the pores',
  transfer: 'missing the floor',
  residue: 'left in pails',
  tools: 'held by tools',
  'lost-batch': 'lost batches',
};

/** The name of a field as people say it. */
const spaced = (name) => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

function coatLines(coat, i) {
  const { amount, split, batches } = coat;
  const film = amount.cautions.some(({ code }) => code === 'pulled-tight') ? 'average, no film' : 'wet film';
  return [
    `${i + 1}. ${coat.name}: ${coat.material} on ${coat.zones.join(' and ')}`,
    line('area', q(coat.area), 'units.sum'),
    line(`  ${film}`, range(amount.wetThickness), 'film.coatVolume'),
    line('  to be mixed', range(amount.volume), 'film.coatVolume'),
    line('    of it on the floor', range(amount.film), 'film.coatVolume'),
    ...amount.losses.map(({ cause, volume }) => line(`    ${LOSS[cause]}`, range(volume), 'film.coatVolume')),
    ...(amount.driver ? [line('  widened most by the', spaced(amount.driver), 'film.coatVolume')] : []),
    line('covers, losses included', q(coat.spreadRate), 'film.spreadRate'),
    line(
      'parts',
      split.parts.map(({ name, volume }) => `${name} ${q(volume)}`).join(', '),
      'mix.splitByVolume',
    ),
    ...(batches ? batchLines(batches) : []),
  ];
}

function batchLines({ potLife, largest, clock }) {
  return [
    line('pot life in the pail', `${q(potLife.potLife)} for ${q(potLife.statedFor)}`, 'cure.potLife'),
    line(
      'largest batch',
      `${field(largest.volume)}, limited by the ${largest.limitedBy}`,
      'batch.largestBatch',
    ),
    ...(clock ? clockLines(clock) : [line('batches', 'none is down in time, see the cautions', '')]),
  ];
}

/** One time of day, or the time since the first batch. */
const time = ({ after, at }) =>
  at ? at.slice(11, 19) : `+${formatQuantity({ quantity: after, locale, decimals: 1 })}`;
/** The day and the offset of a clock that has them. */
const day = ({ at }) =>
  at ? [line('  on', `${at.slice(0, 10)}, UTC${at.slice(19)}`, 'batch.batchClock')] : [];

function clockLines({ batches, stagger, pacedBy, duration }) {
  const [{ marks = [] }] = batches;
  const ratio = ({ off }) =>
    off
      ? ` (${tenths(off.atMarks)} off ratio at the line, ${tenths(off.low)} to ${tenths(off.high)} if misread)`
      : '';
  return [
    line(
      'batches',
      batches.length > 1 ? `${batches.length}, one every ${q(stagger)}, paced by the ${pacedBy}` : '1 batch',
      'batch.batchClock',
    ),
    ...day(batches[0].start),
    line('  all down after', q(duration), 'batch.batchClock'),
    ...marks.map((one) =>
      one.tooCoarse
        ? line(
            `  no mark for ${one.name}`,
            `steps of ${q(one.mark.step)} are too coarse for it`,
            'mix.pailMarks',
          )
        : line(`  fill ${one.name} up to`, `${mark(one.mark)}${ratio(one)}`, 'mix.pailMarks'),
    ),
    '    no.  start      pour by    down by    discard    volume          area            parts   [batch.batchClock]',
    ...batches.map((batch) =>
      [
        `  ${String(batch.number).padStart(4)} `,
        ...[batch.start, batch.pourBy, batch.downBy, batch.discardAt].map((one) => time(one).padEnd(10)),
        q(batch.volume).padEnd(15),
        q(batch.area).padEnd(15),
        batch.parts.map(({ name, volume }) => `${name} ${q(volume)}`).join(', '),
      ].join(' '),
    ),
  ];
}

function purchaseLines({ material, need, spare, packs }) {
  const { low, likely, high } = packs.packs;
  return [
    material,
    line('need, low / likely / high', range(need), 'units.sum'),
    line('packs, low / likely / high', `${low} / ${likely} / ${high}`, 'order.packsToBuy'),
    ...(spare ? [line('spare asked for', `${q(spare, 3)} of the high need`, 'document: spare')] : []),
    line('to buy', `${many(packs.buy, 'pack', 'packs')} = ${q(packs.bought)}`, 'order.packsToBuy'),
    line('  spare, above the need', range(packs.leftover), 'order.packsToBuy'),
  ];
}

const VERDICT = {
  meets: 'meets the margin asked for',
  fails: 'fails the margin asked for',
  undecided: 'undecided: the limit lies within what the instruments may be off',
};

function climateLines({ readings, dewPoint, dewPointMargin: margin }) {
  const read = (label, quantity, error) =>
    line(label, `${q(quantity, 3)}${error ? ` ± ${q(error, 2)}` : ''}`, 'document: readings');
  const within = margin.uncertainty ? ` ± ${q(margin.uncertainty, 2)}` : '';
  return [
    read('air', readings.air, readings.airError),
    read('relative humidity', readings.relativeHumidity, readings.relativeHumidityError),
    read('slab', readings.surface, readings.surfaceError),
    read('material in the pail', readings.material),
    line('dew point of the air', q(dewPoint, 3), 'climate.dewPoint'),
    line('slab less dew point', `${q(margin.measured, 3)}${within}`, 'climate.dewPointMargin'),
    line('asked for', q(margin.limit, 3), 'document: dewPointLimit'),
    line('verdict', VERDICT[margin.verdict], 'climate.dewPointMargin'),
  ];
}

/** What comes first, said once for all dangers instead of behind each. */
const COMES_FIRST =
  "The product's safety data sheet and instructions, local codes and licensed practice come first.";
const SEVERITY = { danger: 'DANGER', caution: 'CAUTION', note: 'note' };

/** The whole plan. */
export function planText(plan) {
  const { name, zones, area, coats, purchases, cautions } = plan;
  return [
    name,
    '='.repeat(name.length),
    'Figures in brackets name the function that computed them. Ranges read low / likely / high.',
    'Parts and batches are for the likely volume; packs are for the high one and the spare.',
    heading('Rooms'),
    ...zones.flatMap(zoneLines),
    line('all rooms', q(area), 'units.sum'),
    heading('Coats'),
    ...coats.flatMap(coatLines),
    heading('To buy'),
    ...purchases.flatMap(purchaseLines),
    heading('Air and slab'),
    ...climateLines(plan),
    heading('Cautions'),
    ...cautions.map(
      (caution) =>
        `  ${SEVERITY[caution.severity]} (${caution.where.join('; ')}): ${cautionText(caution).replace(` ${COMES_FIRST}`, '')}`,
    ),
    `  ${COMES_FIRST}`,
  ].join('\n');
}
