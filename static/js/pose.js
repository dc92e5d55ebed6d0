// Poses of the station: which one holds at a time, and a drawing put into one. What
// may move is told in press/draw, at Station and Motion.

// poseAt is the pose at a time: places run straight between two poses, words and
// lamps stay until the next. The reading is a moment of its own, also where the ram
// goes back at once.
export function poseAt(poses, t) {
	const read = poses.find((q) => q.read && Math.abs(q.time - t) < 1e-9);
	if (read) return read;
	let i = poses.findLastIndex((q) => q.time <= t + 1e-9);
	if (i < 0) i = 0;
	const a = poses[i], b = poses[i + 1];
	if (!b || b.time <= a.time) return a;
	const share = (t - a.time) / (b.time - a.time);
	const out = { ...a, time: t, read: false };
	for (const key of ['position', 'part']) out[key] = a[key] + share * (b[key] - a[key]);
	return out;
}

// seconds writes a time as words.SecondsBare does: rounded up, to 0.01 s, and to 0.001 s
// where it is short.
function seconds(s) {
	const up = (parts) => Math.ceil(s * parts - 1e-6) / parts;
	const short = up(1000);
	return Math.abs(short) < 0.1 ? String(Math.abs(short)) : up(100).toFixed(2);
}

// onto gives the px of a position on a stretch, cut at its ends.
const onto = (s, mm) => s.at + (s.end - s.at) * Math.min(1, Math.max(0, (mm - s.from) / (s.to - s.from)));

// draw puts one drawing into a pose.
export function draw(svg, motion, q) {
	const { drawn, travel, glass } = motion;
	const ram = (mm) => (mm < travel.from ? travel.at - motion.higher : onto(travel, mm));
	const down = (name, by) => svg.querySelector(`.station-${name}`)?.setAttribute('transform', `translate(0 ${by})`);
	down('ram', ram(q.position) - ram(drawn.position));
	down('part', q.part - drawn.part);
	down('tip', onto(glass, q.position) - onto(glass, drawn.position));
	const length = ram(drawn.position) - motion.tool - motion.guide;
	if (length > 0) {
		const grow = (ram(q.position) - motion.tool - motion.guide) / length;
		svg.querySelector('.station-rod')?.setAttribute('transform', `translate(0 ${motion.guide * (1 - grow)}) scale(1 ${grow})`);
	}
	const show = (name, shown) => svg.querySelector(`.${name}`)?.setAttribute('visibility', shown ? 'visible' : 'hidden');
	for (const lamp of ['arrival', 'zone']) {
		for (const state of ['on', 'off', 'unknown']) show(`lamp-${lamp}-${state}`, q[lamp] === state);
	}
	const say = (name, text) => {
		const t = svg.querySelector(`.station-${name} text`);
		if (t) t.textContent = text;
	};
	const at = q.position.toFixed(motion.decimals);
	const above = q.position < glass.from, below = q.position > glass.to;
	show('station-tip', !above && !below);
	show('station-above', above);
	show('station-below', below);
	say('above', `tool above, at ${at}`);
	say('below', `tool below, at ${at}`);
	say('phase', q.phase);
	say('position', `${at}\u202fmm`);
	say('clock', `${seconds(q.time)}\u202fs`);
	say('verdict', q.verdict);
	show('station-verdict', q.verdict !== '');
}
