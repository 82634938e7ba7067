// Heights from rod readings, by arithmetic alone: what the instrument stood at, what each mark is at,
// and by how much a way round does not close. The adjustment of the whole book weighs them later.

const markOf = ({ of, part }) => `${of}/${part ?? 'ground'}`;

/**
 * @param readings in the order in which they were written: {mark, setUp, rod}, rods in metres
 * @param heights what is known beforehand, by mark, metres
 * @return {height by mark, instrument by set-up, closures [{mark, setUp, by}], way, from}; heights are
 *     above the first mark where none is known, which `from` then names
 */
export function reduced(readings, heights) {
  const known = new Map(heights);
  const height = new Map(heights);
  const instrument = new Map();
  const back = new Map();
  let from = null;
  if (known.size === 0 && readings.length > 0) {
    from = readings[0].mark;
    height.set(from, 0);
  }
  const setUps = [...new Set(readings.map((one) => one.setUp))];
  const of = (setUp) => readings.filter((one) => one.setUp === setUp);
  for (let more = true; more; ) {
    more = false;
    for (const setUp of setUps.filter((one) => !instrument.has(one))) {
      const first = of(setUp).find((one) => height.has(one.mark));
      if (first === undefined) continue;
      instrument.set(setUp, height.get(first.mark) + first.rod);
      back.set(setUp, first);
      for (const { mark, rod } of of(setUp)) {
        if (!height.has(mark)) height.set(mark, instrument.get(setUp) - rod);
      }
      more = true;
      break;
    }
  }
  const closures = readings
    .filter((one) => instrument.has(one.setUp) && back.get(one.setUp) !== one)
    .map((one) => ({ ...one, by: instrument.get(one.setUp) - one.rod - height.get(one.mark) }))
    .filter((one) => known.has(one.mark) || one.mark === from || first(readings, one.mark) !== one.setUp);
  return { height, instrument, closures, from, way: way(setUps, of, back, height) };
}

/** The set-up in which a mark was read first. */
const first = (readings, mark) => readings.find((one) => one.mark === mark).setUp;

/**
 * Sum of the backsights less that of the foresights over set-ups that follow each other, beside the
 * difference of what they began and ended at; null where one of them hangs on another.
 */
function way(setUps, of, back, height) {
  let [backs, fores] = [0, 0];
  let last = null;
  for (let i = 0; i < setUps.length; i++) {
    const begin = back.get(setUps[i]);
    if (begin === undefined || (last !== null && begin.mark !== last.mark)) return null;
    const next = back.get(setUps[i + 1]);
    const end = next === undefined
      ? of(setUps[i]).filter((one) => one !== begin).at(-1)
      : of(setUps[i]).find((one) => one.mark === next.mark && one !== begin);
    if (end === undefined) return null;
    backs += begin.rod;
    fores += end.rod;
    last = end;
  }
  if (last === null) return null;
  const began = back.get(setUps[0]).mark;
  return { backs, fores, began, ended: last.mark, between: height.get(last.mark) - height.get(began) };
}

export { markOf };
