// Reads GeoJSON from standard input and prints as JSON what is wrong with it by RFC 7946.
import rewind from '@mapbox/geojson-rewind';
import {check, getIssues} from '@placemarkio/check-geojson';
import {readFileSync} from 'node:fs';

const text = readFileSync(0, 'utf8');
const issues = getIssues(text).map(one => one.message);
if (issues.length === 0) {
  check(text);
  // 3.1.6: outer rings run against the clock. Turned that way by another hand, nothing changes.
  const placed = JSON.parse(text).features.filter(one => one.geometry !== null);
  const turned = rewind(structuredClone(placed.map(one => one.geometry)).reduce(
    (all, one) => { all.geometries.push(one); return all; },
    {type: 'GeometryCollection', geometries: []}), false);
  placed.forEach((one, i) => {
    if (JSON.stringify(one.geometry) !== JSON.stringify(turned.geometries[i])) {
      issues.push(`a ring of ${one.id} runs with the clock`);
    }
  });
}
console.log(JSON.stringify(issues));
