// The whole cycle, played on its drawing: a mark goes along the way of the ram, in real
// time or slower, and what is said follows. An element with data-run (JSON of the ways)
// holds the drawing, an empty layer over it, buttons (data-run-do), a select of the ways,
// one of the speed, and a paragraph that says where the ram is.

for (const root of document.querySelectorAll("[data-run]")) start(root);

function start(root) {
  const ways = JSON.parse(root.dataset.run);
  const [mark, says] = [root.querySelector("[data-run-mark]"), root.querySelector("[data-run-says]")];
  const [which, speed, play] = [root.querySelector("[data-run-way]"), root.querySelector("[data-run-speed]"), root.querySelector('[data-run-do="play"]')];
  const still = matchMedia("(prefers-reduced-motion: reduce)");
  let now = 0, before = 0, running = false;
  const poses = () => ways[Number(which.value)].poses;
  const end = () => poses().at(-1).time;

  function show() {
    const all = poses();
    const i = Math.max(0, all.findLastIndex((q) => q.time <= now + 1e-9));
    const [a, b] = [all[i], all[i + 1] ?? all[i]];
    const share = b.time > a.time ? Math.min(1, (now - a.time) / (b.time - a.time)) : 0;
    const between = (key) => a[key] + share * (b[key] - a[key]);
    mark.setAttribute("visibility", "visible");
    mark.setAttribute("transform", `translate(${between("x").toFixed(2)} ${between("y").toFixed(2)})`);
    const text = `${a.says} Ram at ${between("at").toFixed(ways[Number(which.value)].decimals)}\u202fmm, ${now.toFixed(2)}\u202fs.`;
    if (says.textContent !== text) says.textContent = text;
  }

  function tick(at) {
    if (!running) return;
    now = Math.min(end(), now + (Math.max(0, at - before) / 1000) * Number(speed.value));
    before = at;
    show();
    if (now >= end()) return stop();
    requestAnimationFrame(tick);
  }

  function stop() {
    running = false;
    play.textContent = still.matches ? "Next step" : "Play";
  }

  // next goes to where something else is said.
  function next() {
    stop();
    const all = poses();
    const i = Math.max(0, all.findLastIndex((q) => q.time <= now + 1e-9));
    now = all.slice(i + 1).find((q) => q.says !== all[i].says)?.time ?? end();
    show();
  }

  const does = {
    play: () => {
      if (running) return stop();
      if (now >= end()) now = 0;
      if (still.matches) return next();
      running = true;
      before = performance.now();
      play.textContent = "Pause";
      requestAnimationFrame(tick);
    },
    next,
    again: () => {
      stop();
      now = 0;
      show();
    },
  };
  root.addEventListener("click", (e) => does[e.target.closest("[data-run-do]")?.dataset.runDo]?.());
  which.addEventListener("change", does.again);
  root.querySelector("[data-run-controls]").removeAttribute("hidden");
  stop();
  show();
}
