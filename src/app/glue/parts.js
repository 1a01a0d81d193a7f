// How the later parts of the program come. The small ones lie on one shelf, a
// file that is fetched once, so that a screen does not wait for a hundred of
// them in turn.

const SHELF = ["./__SHELF__", "__SHELF_INTEGRITY__"];

// A host may not know the type of the file, or may pack the page into another
// program: plain bytes work everywhere.
const whole = async (file, integrity) =>
  (await fetch(new URL(file, import.meta.url), { integrity })).arrayBuffer();

let shelf;
const shelved = async (from, to) => {
  shelf ??= whole(...SHELF);
  try {
    return new Uint8Array(await shelf, from, to - from);
  } catch (error) {
    // What could not be fetched may be asked for again.
    shelf = undefined;
    throw error;
  }
};
