// The table of places along the line, as the page brings it: a column for each figure. Nothing is
// computed here but which row is meant.

const NEAR = 0.011; // distances are written with two decimals
const OFF = 3; // a recording that shows a place so many rows away shows this one, too

export class Table {
  constructor(text) {
    Object.assign(this, JSON.parse(text));
    this.rows = this.where.length;
    this.along = [];
    for (let row = 0; row < this.rows; row++) {
      const same = row > 0 && this.reach[row] === this.reach[row - 1];
      this.along[row] = (this.along[row - 1] ?? 0) + (same ? Math.abs(this.distance[row] - this.distance[row - 1]) : 0);
    }
  }

  word(column, row) {
    const number = this[column][row];
    return number < 0 ? null : this.words[number];
  }

  /** Where a row lies on a drawing; null where that does not show it. */
  spot(drawing, row) {
    const columns = this[drawing];
    const at = row - columns.first;
    if (at < 0 || at >= columns.rows) return null;
    const of = (name) => (columns[name].length === 1 ? columns[name][0] : columns[name][at]);
    const x = of('x');
    return x === null ? null
      : { x, y: of('y'), from: of('from'), to: of('to'), wide: of('wide'), high: of('high'), turn: of('turn') };
  }

  /** The row of a place; −1 where there is none so near. */
  place(reach, distance) {
    let best = -1;
    for (let row = 0; row < this.rows; row++) {
      if (this.words[this.reach[row]] !== reach) continue;
      if (best < 0 || Math.abs(this.distance[row] - distance) < Math.abs(this.distance[best] - distance)) best = row;
    }
    return best >= 0 && Math.abs(this.distance[best] - distance) < Math.max(NEAR, 0.2) ? best : -1;
  }

  route(row) {
    return this.routes.find((one) => row >= one.from && row <= one.to);
  }

  /** What has a name and goes along a row. */
  here(row) {
    return this.things.filter((one) => row >= one.from && row <= one.to);
  }

  /** The row of the next thing in that direction, as the table has them. */
  next(row, step) {
    const rows = [...new Set(this.things.map((one) => one.from))].sort((a, b) => a - b);
    return step > 0 ? rows.find((one) => one > row) ?? row : rows.findLast((one) => one < row) ?? row;
  }

  /** The id of the picture nearest to a row, on the way that it lies on; empty where there is none. */
  pictured(row) {
    const route = this.route(row);
    const off = (one) =>
      row < one.from ? this.along[one.from] - this.along[row] : Math.max(0, this.along[row] - this.along[one.to]);
    let best = '';
    let least = Infinity;
    for (const one of this.things) {
      if (!one.picture || one.to < route.from || one.from > route.to) continue;
      if (off(one) < least) [best, least] = [one.picture, off(one)];
    }
    return best;
  }

  /** The row that a recording shows at a moment, and whether that was only filled in. */
  shown(ride, seconds) {
    let low = 0;
    let high = ride.seconds.length - 1;
    if (high < 0 || seconds < ride.seconds[0]) return { row: -1, bridged: false };
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (ride.seconds[middle] <= seconds) low = middle;
      else high = middle - 1;
    }
    return { row: ride.sample[low], bridged: ride.bridged.includes(low) };
  }

  /** The first moment at which a recording shows a row, or one next to it; null where it does not. */
  moment(ride, row) {
    const route = this.route(row);
    let best = -1;
    let off = OFF + 1;
    for (let i = 0; i < ride.sample.length; i++) {
      const sample = ride.sample[i];
      if (sample < route.from || sample > route.to) continue;
      const far = Math.abs(sample - row);
      if (far < off) [best, off] = [i, far];
    }
    return best < 0 ? null : { seconds: ride.seconds[best], bridged: ride.bridged.includes(best) };
  }
}
