// Other ways to say where a spot is: a touch on the sketch, and a fix where the page is secure.

/**
 * Wires them; returns what ends a touch that was asked for and did not come.
 *
 * @param walk the form of the spot, what it holds, and where on the ground the sketch was touched
 */
export function otherWays({ form, queue, say, current, gathered, place }) {
  const at = (id) => document.getElementById(id);
  let dropping = false;

  function stopDropping() {
    dropping = false;
    at('drawing').classList.remove('dropping');
  }

  at('drop').addEventListener('click', () => {
    dropping = true;
    at('drawing').classList.add('dropping');
    at('drop-told').textContent = say('drop.touch');
    at('sketch').scrollIntoView({ block: 'center' });
  });
  at('drawing').addEventListener('click', async (event) => {
    if (!dropping || current() === null) return;
    const { east, north } = place(event);
    current().keys = { ...gathered().keys, sketch: { east: `${east.toFixed(1)} m`, north: `${north.toFixed(1)} m` } };
    await queue.put({ ...current(), open: true });
    stopDropping();
    at('drop-told').textContent = say('drop.kept');
    form.scrollIntoView({ block: 'end' });
  });
  at('gnss').addEventListener('click', () => {
    at('gnss-told').textContent = say('gnss.asking');
    navigator.geolocation.getCurrentPosition(async ({ coords }) => {
      if (current() === null) return;
      // Browsers give the radius that holds 95 of 100 fixes; over 2.448 it is a standard uncertainty.
      const sd = `${(coords.accuracy / 2.4477).toFixed(1)} m`;
      const gnss = { latitude: coords.latitude.toFixed(7), longitude: coords.longitude.toFixed(7), sd };
      current().keys = { ...gathered().keys, gnss };
      await queue.put({ ...current(), open: true });
      at('gnss-told').textContent = say('gnss.kept', sd);
    }, ({ message }) => {
      at('gnss-told').textContent = say('gnss.failed', message);
    }, { enableHighAccuracy: true, timeout: 30000, maximumAge: 0 });
  });
  return stopDropping;
}
