// The station in motion: moves the groups of the side view through the poses that
// the page carries, in real or slow time or step by step, with the cursor on the
// strip in step. Without this script the page shows the stills and the list of
// steps.
//
// An element with data-station holds its drawings, each in an element of its own
// with data-motion (JSON of its poses, in its own px), buttons (data-do="play",
// "back", "next", "again"), a select data-speed, and a paragraph data-says. Its
// data-cursor (JSON) says where on the strips of the page a line may stand.

const svgSpace = 'http://www.w3.org/2000/svg';

for (const root of document.querySelectorAll('[data-station]')) start(root);

function start(root) {
	const figures = [...root.querySelectorAll('[data-motion]')].map((f) => ({ svg: f.querySelector('svg'), motion: JSON.parse(f.dataset.motion) }));
	const poses = figures[0].motion.poses;
	const end = poses[poses.length - 1].time;
	const still = matchMedia('(prefers-reduced-motion: reduce)');
	const stops = changes(poses);
	const cursors = cursorsOf(root);
	const play = root.querySelector('[data-do="play"]');
	const speed = root.querySelector('[data-speed]');
	let now = 0, before = 0, running = false;

	function show() {
		const q = poseAt(poses, now);
		for (const f of figures) draw(f.svg, f.motion, poseAt(f.motion.poses, now));
		for (const c of cursors) c(q.position);
		const says = root.querySelector('[data-says]');
		const text = `${q.phase}. ${q.says}`;
		if (says && says.textContent !== text) says.textContent = text;
	}

	function tick(at) {
		if (!running) return;
		now = Math.min(end, now + (at - before) / 1000 * Number(speed?.value || 1));
		before = at;
		show();
		if (now >= end) return stop();
		requestAnimationFrame(tick);
	}

	function go() {
		if (still.matches) return step(1);
		if (now >= end) now = 0;
		running = true;
		before = performance.now();
		label('Pause');
		requestAnimationFrame(tick);
	}

	function stop() {
		running = false;
		label(still.matches ? 'Next step' : 'Play');
	}

	function label(text) { if (play) play.textContent = text; }

	function step(by) {
		stop();
		const slack = 1e-6;
		const next = by > 0 ? stops.find((t) => t > now + slack) : stops.findLast((t) => t < now - slack);
		now = next ?? (by > 0 ? end : 0);
		show();
	}

	const does = {
		play: () => running ? stop() : go(),
		next: () => step(1),
		back: () => step(-1),
		again: () => { stop(); now = 0; show(); if (!still.matches) go(); },
	};
	root.addEventListener('click', (e) => {
		const what = e.target.closest('[data-do]')?.dataset.do;
		if (does[what]) does[what]();
	});
	root.querySelector('[data-controls]')?.removeAttribute('hidden');
	stop();
	show();
}

// changes are the times at which a phase begins or a lamp changes.
function changes(poses) {
	const same = (a, b) => a.phase === b.phase && a.arrival === b.arrival && a.zone === b.zone;
	return poses.filter((q, i) => i === 0 || !same(q, poses[i - 1])).map((q) => q.time);
}

// poseAt is the pose at a time: places run straight between two poses, words and
// lamps stay until the next.
function poseAt(poses, t) {
	let i = poses.findLastIndex((q) => q.time <= t + 1e-9);
	if (i < 0) i = 0;
	const a = poses[i], b = poses[i + 1];
	if (!b || b.time <= a.time) return a;
	const share = (t - a.time) / (b.time - a.time);
	const out = { ...a, time: t };
	for (const key of ['position', 'ram', 'part', 'tip']) out[key] = a[key] + share * (b[key] - a[key]);
	return out;
}

// draw puts one drawing into a pose.
function draw(svg, motion, q) {
	const drawn = motion.drawn;
	const down = (name, by) => svg.querySelector(`.station-${name}`)?.setAttribute('transform', `translate(0 ${by})`);
	down('ram', q.ram - drawn.ram);
	down('part', q.part - drawn.part);
	down('tip', q.tip - drawn.tip);
	const length = drawn.ram - motion.tool - motion.guide;
	if (length > 0) {
		const grow = (q.ram - motion.tool - motion.guide) / length;
		svg.querySelector('.station-rod')?.setAttribute('transform', `translate(0 ${motion.guide * (1 - grow)}) scale(1 ${grow})`);
	}
	for (const lamp of ['arrival', 'zone']) {
		for (const state of ['on', 'off', 'unknown']) {
			svg.querySelector(`.lamp-${lamp}-${state}`)?.setAttribute('visibility', q[lamp] === state ? 'visible' : 'hidden');
		}
	}
	const say = (name, text) => {
		const t = svg.querySelector(`.station-${name} text`);
		if (t) t.textContent = text;
	};
	say('phase', q.phase);
	say('position', `${q.position.toFixed(motion.decimals)}\u202fmm`);
	say('clock', `${q.time.toFixed(2)}\u202fs`);
}

// cursorsOf gives functions that put a line on each strip of the page.
function cursorsOf(root) {
	const all = JSON.parse(root.dataset.cursor || '[]');
	return all.map((c) => {
		const svg = document.querySelector(`svg[aria-labelledby^="${c.id}-title"]`);
		if (!svg) return () => {};
		const line = document.createElementNS(svgSpace, 'path');
		line.setAttribute('class', 'line-ink');
		line.setAttribute('fill', 'none');
		line.setAttribute('stroke-width', '2');
		svg.append(line);
		return (mm) => {
			const share = Math.min(1, Math.max(0, (mm - c.from) / (c.to - c.from)));
			const x = c.at + share * (c.end - c.at);
			line.setAttribute('d', `M${x} ${c.top}L${x} ${c.bottom}`);
			line.setAttribute('stroke-dasharray', mm < c.from || mm > c.to ? '2 6' : 'none');
		};
	});
}
