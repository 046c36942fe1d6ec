const store = "workbooks";

/** Where workbooks are kept in this browser, each under a key. Rejects where the browser keeps nothing. */
export interface Storage {
  read(key: string): Promise<unknown>;
  write(key: string, value: unknown): Promise<void>;
}

/** Opens the browser's own database for this page's origin. */
export async function openStorage(name = "penstake"): Promise<Storage> {
  const opening = indexedDB.open(name, 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore(store);
  const database = await settled(opening);
  const within = (mode: IDBTransactionMode) => database.transaction(store, mode).objectStore(store);
  return {
    read: (key) => settled(within("readonly").get(key) as IDBRequest<unknown>),
    write: async (key, value) => void (await settled(within("readwrite").put(value, key))),
  };
}

function settled<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error("The browser's storage failed."));
  });
}
