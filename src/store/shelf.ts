/** Where the page keeps things between visits; every local page shares one store, so all keys bear the name. */
export interface Shelf {
  read(name: string): string | null;
  /** @returns null when it was kept, else why not, in words for the person */
  write(name: string, text: string): string | null;
  remove(name: string): void;
}

const prefix = "hindwire.v1.";

/** A shelf on the browser's storage. Storage that is switched off or full is said, never thrown. */
export function shelf(storageOf: () => Storage): Shelf {
  const attempt = <T>(act: (storage: Storage) => T, otherwise: T): T => {
    try {
      return act(storageOf());
    } catch {
      return otherwise;
    }
  };
  return {
    read: (name) => attempt((storage) => storage.getItem(prefix + name), null),
    write: (name, text) => {
      try {
        storageOf().setItem(prefix + name, text);
        return null;
      } catch (error) {
        return isFull(error)
          ? "this browser's store for local pages is full"
          : "this browser does not let the page keep anything";
      }
    },
    remove: (name) => attempt((storage) => storage.removeItem(prefix + name), undefined),
  };
}

function isFull(error: unknown): boolean {
  return error instanceof DOMException && error.name === "QuotaExceededError";
}

/** The page's own shelf. Even naming `localStorage` can throw, so it is named only when used. */
export const pageShelf = shelf(() => localStorage);
