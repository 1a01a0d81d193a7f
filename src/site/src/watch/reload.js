// While the page is being written: reload when a newer build is there.
let shown;
for (;;) {
  try {
    const number = await (await fetch("build-number", { cache: "no-store" })).text();
    shown ??= number;
    if (number !== shown) location.reload();
  } catch {
    // The server is away; it may come back.
  }
  await new Promise((resolve) => setTimeout(resolve, 500));
}
