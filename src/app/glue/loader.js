// Brings the page to life: fetches the program and the outline side by side,
// starts the one with the other, lets the program send for the rest, and says in plain words what to try when that
// fails. The names in capitals are filled in by `cargo site build`.

const at = (name) => new URL(name, import.meta.url);
const place = (id) => document.getElementById(id);

const RECONNECT = "Check the connection.";
const UPDATE = "Update this browser, or open the page in another one.";
const RELOAD = "Reload the page.";

class Failure extends Error {
  constructor(what, remedies, detail) {
    super(what);
    this.remedies = remedies;
    this.detail = detail;
  }
}

async function get(name, what) {
  let response;
  try {
    response = await fetch(at(name));
  } catch (error) {
    throw new Failure(`${what} could not be fetched.`, [RECONNECT, RELOAD], error);
  }
  if (!response.ok) {
    throw new Failure(
      `${what} is not where it should be: the site answered “${response.status}”. It may be in the middle of an update.`,
      ["Wait a minute.", RELOAD],
      name,
    );
  }
  return response;
}

async function bytes(name, what) {
  const response = await get(name, what);
  try {
    return new Uint8Array(await response.arrayBuffer());
  } catch (error) {
    throw new Failure(`${what} broke off on its way here.`, [RECONNECT, RELOAD], error);
  }
}

const outline = () => bytes("__OUTLINE__", "The list of what there is");
const catalogue = () => bytes("__CATALOGUE__", "The catalogue (procedures, instruments and materials)");

// Only where packs are written or used: what the catalogue was made from.
const sources = () => bytes("__SOURCES__", "The sources of the catalogue");

async function program() {
  const what = "The program";
  if (typeof WebAssembly !== "object") {
    throw new Failure("This browser is too old for the page: it has no WebAssembly.", [UPDATE]);
  }
  // Asked for before the glue is there, so that neither waits for the other.
  const response = get("__WASM__", what);
  response.catch(() => {});
  let glue;
  try {
    glue = await import("./__GLUE__");
  } catch (error) {
    throw new Failure(`${what} could not be fetched.`, [RECONNECT, RELOAD, UPDATE], error);
  }
  try {
    await glue.default({ module_or_path: await response });
  } catch (error) {
    if (error instanceof Failure) throw error;
    if (error instanceof WebAssembly.CompileError || error instanceof WebAssembly.LinkError) {
      throw new Failure(
        `${what} arrived damaged, or this browser is too old for it.`,
        [RELOAD, UPDATE],
        error,
      );
    }
    throw new Failure(`${what} broke off on its way here.`, [RECONNECT, RELOAD], error);
  }
  return glue;
}

function line(tag, text) {
  const element = document.createElement(tag);
  element.textContent = text;
  return element;
}

function press(text, act) {
  const button = line("button", text);
  button.type = "button";
  button.addEventListener("click", act);
  return button;
}

function show(failure) {
  const list = document.createElement("ol");
  list.append(...(failure.remedies ?? [RELOAD, UPDATE]).map((remedy) => line("li", remedy)));
  const detail = failure.detail?.message ?? failure.detail;
  place("shell")?.classList.add("stopped");
  place("fault").replaceChildren(
    line("h2", "Trayward cannot go on"),
    line("p", failure.message),
    line("p", "What you have done so far is kept on this device. What to try:"),
    list,
    press("Reload", () => location.reload()),
    ...(detail ? [line("small", `${detail}`)] : []),
  );
}

// A program that has stopped leaves buttons that do nothing: better to say so.
function watchForStops() {
  const stopped = (error) => {
    if (error instanceof WebAssembly.RuntimeError) {
      show(new Failure("The program has stopped because of a fault in it.", [RELOAD], error));
    }
  };
  addEventListener("error", (event) => stopped(event.error));
  addEventListener("unhandledrejection", (event) => stopped(event.reason));
}

// A new version waits until the reader wants it, or until the page is next
// opened afresh: nobody loses their place in a case. The page itself says that
// it is there, and asks for it.
function offer(registration) {
  if (registration.waiting && navigator.serviceWorker.controller) {
    dispatchEvent(new CustomEvent("trayward:update-ready"));
  }
}

function use(registration) {
  const { serviceWorker } = navigator;
  if (!registration.waiting) return;
  serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
  registration.waiting.postMessage("SKIP_WAITING");
}

// Until the first screen is there, the line belongs to it.
function firstScreen() {
  const awaited = () => document.querySelector("main [aria-busy]");
  return new Promise((resolve) => {
    const look = () => {
      if (awaited()) return;
      observer.disconnect();
      resolve();
    };
    const observer = new MutationObserver(look);
    observer.observe(document.body, { subtree: true, childList: true, attributeFilter: ["aria-busy"] });
    look();
  });
}

async function keepForOffline() {
  const { serviceWorker } = navigator;
  if (!serviceWorker) return;
  await firstScreen();
  const registration = await serviceWorker.register(at("sw.js"), { updateViaCache: "none" });
  addEventListener("trayward:use-update", () => use(registration));
  offer(registration);
  registration.addEventListener("updatefound", () => {
    // The first worker of all replaces nothing. Some browsers still call it waiting
    // when the page is already in its care.
    if (!registration.active) return;
    registration.installing?.addEventListener("statechange", () => offer(registration));
  });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") registration.update().catch(() => {});
  });
}

// Today needs the outline alone. Who comes for another screen should not wait
// for one file after the other.
function ahead() {
  if (/^(#\/?(today\/?)?)?$/.test(location.hash)) return undefined;
  const early = catalogue();
  early.catch(() => {});
  return early;
}

try {
  let early = ahead();
  const [glue, list] = await Promise.all([program(), outline()]);
  watchForStops();
  try {
    const fetchCatalogue = () => {
      const promised = early ?? catalogue();
      early = undefined;
      return promised;
    };
    glue.start(list, fetchCatalogue, sources);
  } catch (error) {
    const reason = typeof error === "string" ? error : "The program could not start.";
    throw new Failure(reason, [RELOAD, UPDATE], error);
  }
  place("shell")?.remove();
  // Without a worker the page works all the same, but only with a connection.
  keepForOffline().catch((error) => console.warn("Not kept for offline use:", error));
} catch (failure) {
  show(failure);
}
