// The station in motion: moves the groups of the side view through the poses that
// the page carries, in real or slow time or step by step, with the cursor on the
// strip in step, and stops where the lamps are read. Without this script the page shows the stills and the list of
// steps.
//
// An element with data-station holds its drawings, each in an element of its own
// with data-motion (JSON of its poses, in its own px), buttons (data-do="play",
// "back", "next", "again"), a select data-speed, and a paragraph data-says. Its
// data-cursor (JSON) says where on the strips of the page a line may stand; while it
// stands on none, the paragraph data-where says where the ram is.

import { draw, poseAt } from "./pose.js";

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
	const says = root.querySelector('[data-says]');
	const where = document.querySelector('[data-where]');
	const reading = poses.find((q) => q.read)?.time ?? end;
	let now = 0, before = 0, running = false;

	function show() {
		const q = poseAt(poses, now);
		for (const f of figures) draw(f.svg, f.motion, poseAt(f.motion.poses, now));
		for (const c of cursors) c(q.position);
		if (where && cursors.length > 0) where.textContent = whereOf(cursors[0], q.position.toFixed(figures[0].motion.decimals), q.position);
		const text = `${q.phase}. ${q.says}`;
		if (says && says.textContent !== text) says.textContent = text;
		says?.classList.toggle('read', q.read === true);
	}

	function tick(at) {
		if (!running) return;
		const next = Math.min(end, now + Math.max(0, at - before) / 1000 * Number(speed?.value || 1));
		const due = now < reading && next >= reading;
		now = due ? reading : next;
		before = at;
		show();
		if (due) says?.scrollIntoView({ block: 'nearest' });
		if (due || now >= end) return stop();
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
		label(still.matches ? 'Next step' : now === reading && now < end ? 'Go on' : 'Play');
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

// whereOf says where a ram stands that the strip does not show; empty where it does.
function whereOf(cursor, figure, mm) {
	if (mm >= cursor.from && mm <= cursor.to) return '';
	return `The ram stands at ${figure}\u202fmm, ${mm < cursor.from ? 'before' : 'beyond'} what is magnified here.`;
}

// cursorsOf gives functions that put a line on each strip of the page, with the
// positions between which it can stand.
function cursorsOf(root) {
	const all = JSON.parse(root.dataset.cursor || '[]');
	return all.map((c) => {
		const svg = document.querySelector(`svg[aria-labelledby^="${c.id}-title"]`);
		if (!svg) return Object.assign(() => {}, c);
		const line = document.createElementNS(svgSpace, 'path');
		line.setAttribute('class', 'line-ink');
		line.setAttribute('fill', 'none');
		line.setAttribute('stroke-width', '2');
		svg.append(line);
		return Object.assign((mm) => {
			const share = (mm - c.from) / (c.to - c.from);
			const x = c.at + share * (c.end - c.at);
			line.setAttribute('visibility', share < 0 || share > 1 ? 'hidden' : 'visible');
			line.setAttribute('d', `M${x} ${c.top}L${x} ${c.bottom}`);
		}, { from: c.from, to: c.to });
	});
}
