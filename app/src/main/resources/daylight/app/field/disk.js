// The store of this browser, in which lies what the archive has not yet answered to have kept.

/** What a request gives when it is done. */
export const asked = (request) =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

/** Opens a database; stores are made where it is new: their names, and how each finds its items. */
export function opened(name, stores) {
  const request = indexedDB.open(name, 1);
  request.onupgradeneeded = () => {
    for (const [store, key] of Object.entries(stores)) {
      request.result.createObjectStore(store, key);
    }
  };
  return asked(request);
}
