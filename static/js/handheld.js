// The drill in a file of its own: asks, judges, shows what came of it, and makes the
// record code. The questions stand on the page as templates; what is right, and why,
// stands in its data. How a round goes on is told in press/drill, at Session.

import { codeOf, tidy } from "./code.js";
import { draw } from "./pose.js";

const data = JSON.parse(document.getElementById('data').textContent);
const stage = document.getElementById('stage');
const home = document.querySelectorAll('[data-home]');
let leaving = null; // what stops when the stage is left

document.documentElement.classList.add('scripted');
lamps();
for (const b of document.querySelectorAll('[data-round]')) b.addEventListener('click', () => round(Number(b.dataset.round)));
for (const b of document.querySelectorAll('[data-exam]')) b.addEventListener('click', () => exam(b.dataset.exam));

// At the station

function lamps() {
	const form = document.querySelector('#station form');
	const tell = () => {
		const on = (name) => form.querySelector(`[name=${name}]:checked`)?.value;
		const pair = `${on('arrival')}-${on('zone')}`, when = form.elements.when.value;
		for (const a of document.querySelectorAll('[data-lamps]')) a.hidden = a.dataset.lamps !== pair || a.dataset.when !== when;
	};
	form.addEventListener('change', tell);
	form.addEventListener('submit', (e) => e.preventDefault());
	tell();
}

// The stage

// put shows a template on the stage in place of everything else.
function put(name) {
	stage.replaceChildren(document.getElementById(name).content.cloneNode(true));
	stage.hidden = false;
	for (const h of home) h.hidden = true;
	for (const b of stage.querySelectorAll('[data-leave]')) b.addEventListener('click', leave);
	scrollTo(0, 0);
}

function leave() {
	if (leaving && !confirm('Leave? What was answered so far is forgotten.')) return;
	over();
	stage.replaceChildren();
	stage.hidden = true;
	for (const h of home) h.hidden = false;
	scrollTo(0, 0);
	document.getElementById('main').focus();
}

const warn = (e) => e.preventDefault();

// under says that something is under way, and what is to stop with it.
function under(stop) {
	leaving = stop;
	addEventListener('beforeunload', warn);
}

function over() {
	leaving?.();
	leaving = null;
	removeEventListener('beforeunload', warn);
}

const pick = (list) => list[Math.floor(Math.random() * list.length)];

// question makes the element of an item; again mixes its choices anew.
function question(item, { number = 0, again = false } = {}) {
	const at = document.createElement('div');
	at.className = 'one';
	at.append(document.getElementById(`i${item}`).content.cloneNode(true));
	const scene = at.querySelector('[data-scene]');
	if (scene) scene.append(document.getElementById(scene.dataset.scene).content.cloneNode(true));
	const choices = [...at.querySelectorAll('.choice')];
	if (again) {
		for (let i = choices.length - 1; i > 0; i--) {
			const j = Math.floor(Math.random() * (i + 1));
			[choices[i], choices[j]] = [choices[j], choices[i]];
		}
		at.querySelector('fieldset').append(...choices);
	}
	if (number) {
		const nth = document.createElement('span');
		nth.className = 'nth';
		nth.textContent = `${number}. `;
		at.querySelector('legend').prepend(nth);
		for (const c of choices) c.querySelector('input').required = false;
	}
	return at;
}

const given = (at) => at.querySelector('input:checked')?.value ?? '';

// judge says what an answer to an item is worth.
function judge(item, value) {
	const it = data.items[item];
	if (it.right.includes(value)) return { right: true, reason: it.explain, grave: '' };
	if (!value) return { right: false, reason: `No answer was given. ${it.explain}`, grave: '' };
	return { right: false, reason: it.reasons[value], grave: it.grave[value] ?? '' };
}

// tell puts what an answer is worth, and what came of it, on its question.
function tell(at, item, value, alone) {
	const it = data.items[item], j = judge(item, value);
	at.querySelector('fieldset').disabled = true;
	for (const c of at.querySelectorAll('.choice')) {
		const of = c.querySelector('input').value, right = it.right.includes(of);
		const marks = [...(value && of === value ? ['your answer'] : []), ...(right ? ['right'] : [])];
		if (marks.length > 0) c.classList.add(right ? 'right' : 'given');
		for (const m of marks) {
			const mark = document.createElement('b');
			mark.className = 'mark';
			mark.textContent = m;
			c.querySelector('span').append(' ', mark);
		}
	}
	const scene = at.querySelector('[data-scene]');
	const motion = scene && data.scenes[scene.dataset.scene];
	if (motion) {
		draw(scene.querySelector('svg'), motion, motion.poses[0]);
		const came = document.createElement('p');
		came.className = 'ended';
		const b = document.createElement('b');
		b.textContent = 'The station as the lamps are read:';
		came.append(b);
		scene.parentElement.before(came);
	}
	const v = document.getElementById('verdict').content.cloneNode(true);
	v.querySelector('.verdict').classList.toggle('wrong', !j.right);
	v.querySelector('[data-word]').textContent = j.right ? 'Right.' : 'Wrong.';
	v.querySelector('[data-reason]').textContent = j.reason;
	if (j.grave) v.querySelector('[data-alone]').textContent = alone ? `This alone fails: ${j.grave}.` : `In an exam this answer alone fails: ${j.grave}.`;
	at.append(v);
	return j;
}

// A round

function round(level) {
	const set = pick(data.rounds[level - 1]), begun = Date.now();
	const s = { fresh: [...set.items], due: [], tried: 0, right: 0, seen: [], missed: [], times: {}, repeat: false };
	under(() => {});
	ask();

	function next() {
		if (s.tried >= data.length || s.fresh.length + s.due.length === 0) return undefined;
		if (s.fresh.length === 0 || s.due.length > 0 && !s.repeat && s.due[0].from <= s.tried) return s.due[0].item;
		return s.fresh[0];
	}

	function answered(item, right) {
		s.fresh = s.fresh.filter((i) => i !== item);
		s.due = s.due.filter((d) => d.item !== item);
		s.missed = s.missed.filter((i) => i !== item);
		s.times[item] = (s.times[item] ?? 0) + 1;
		s.tried++;
		s.repeat = s.seen.includes(item);
		if (!s.repeat) s.seen.push(item);
		if (!right) {
			s.missed.push(item);
			if (s.times[item] < data.times) s.due.push({ item, from: s.tried + data.soon });
		} else if (!s.repeat) s.right++;
	}

	function progress(nth, again) {
		const total = Math.min(data.length, Math.max(nth, s.tried + s.fresh.length + s.due.length));
		let text = `Question ${nth} of ${total}`;
		if (again) text += ', asked again because it was missed';
		if (s.seen.length > 0) text += `. ${s.right} of ${s.seen.length} right at the first go`;
		return `${text}.`;
	}

	function ask() {
		const item = next();
		if (item === undefined) {
			over();
			return score({
				title: 'The round is over', points: `${s.right} of ${count(s.seen.length, 'question')} right at the first go; ${count(s.tried, 'answer')} in all.`,
				missed: s.missed.map((i) => ({ item: i })), heading: 'Missed, and not right since',
				code: { level, right: s.right, items: s.seen.length, needed: 0, seed: set.seed, seconds: (Date.now() - begun) / 1000 },
			});
		}
		put('round');
		const form = stage.querySelector('form'), nth = s.tried + 1, again = s.seen.includes(item);
		const at = question(item, { again });
		form.querySelector('[data-questions]').append(at);
		form.querySelector('#progress').textContent = progress(nth, again);
		at.querySelector('legend').tabIndex = -1;
		at.querySelector('legend').focus();
		const go = form.querySelector('[data-next]');
		go.addEventListener('click', ask);
		form.addEventListener('submit', (e) => {
			e.preventDefault();
			if (!go.hidden || !given(at)) return;
			answered(item, tell(at, item, given(at), false).right);
			form.querySelector('#progress').textContent = progress(nth, again);
			form.querySelector('[data-answer]').hidden = true;
			stage.querySelector('[data-brief]').hidden = true;
			stage.querySelector('[data-full]').hidden = false;
			go.hidden = false;
			go.focus({ preventScroll: true });
			go.scrollIntoView({ block: 'nearest' });
		});
	}
}

const count = (n, one) => `${n} ${one}${n === 1 ? '' : 's'}`;

// An exam

function exam(role) {
	const x = data.exams[role], set = pick(x.sets), begun = Date.now();
	put('exam');
	const form = stage.querySelector('form'), clock = form.querySelector('#clock'), open = form.querySelector('#open'), trouble = form.querySelector('#trouble');
	const all = set.items.map((item, i) => ({ item, at: question(item, { number: i + 1 }) }));
	for (const [i, q] of all.entries()) {
		const s = document.createElement('section');
		s.className = 'block question';
		s.id = `q${i + 1}`;
		s.append(q.at);
		form.querySelector('[data-questions]').append(s);
	}
	const seconds = () => (Date.now() - begun) / 1000;
	const unanswered = () => all.flatMap((q, i) => (given(q.at) ? [] : [i + 1]));
	let warned = false;

	function show() {
		if (x.limit > 0) {
			const left = Math.ceil(x.limit - seconds());
			clock.textContent = left >= 0 ? `${Math.floor(left / 60)}:${String(left % 60).padStart(2, '0')} left` : 'The time is over: what is handed in now is not passed.';
		}
		open.textContent = `${all.length - unanswered().length} of ${all.length} answered`;
	}

	const beat = setInterval(show, 1000);
	under(() => clearInterval(beat));
	form.addEventListener('change', () => { trouble.textContent = ''; warned = false; show(); });
	form.addEventListener('submit', (e) => {
		e.preventDefault();
		const missing = unanswered();
		if (missing.length > 0 && !warned) {
			warned = true;
			trouble.textContent = `Without an answer: ${missing.join(', ')}. Hand in once more to hand in all the same.`;
			return;
		}
		const took = seconds();
		over();
		hand(took);
	});
	show();

	function hand(took) {
		const overTime = x.limit > 0 && took > x.limit;
		let right = 0;
		const missed = [], grave = new Set();
		for (const [i, q] of all.entries()) {
			const j = tell(q.at, q.item, given(q.at), true);
			if (j.right) right++;
			else missed.push({ item: q.item, number: i + 1, alone: j.grave !== '' });
			if (j.grave) grave.add(j.grave);
		}
		const passed = right >= set.needed && !overTime && grave.size === 0;
		const why = [...(right < set.needed ? ['the score is below the mark'] : []), ...(overTime ? ['over the time'] : []), ...grave];
		score({
			title: `${x.title}: ${passed ? 'passed, for practice' : `not passed: ${why.join('; ')}`}`, points: `${right} of ${count(all.length, 'question')} right; ${set.needed} needed.`,
			missed, heading: 'Missed', questions: all.map((q) => q.at.parentElement),
			code: { role, passed, overTime, grave: grave.size > 0, right, items: all.length, needed: set.needed, seed: set.seed, seconds: took },
		});
	}
}

// What it came to

function score(r) {
	put('score');
	const title = stage.querySelector('#score-h'), list = stage.querySelector('#missed'), heading = stage.querySelector('#missed-h');
	title.textContent = r.title;
	stage.querySelector('#points').textContent = r.points;
	heading.hidden = r.missed.length === 0;
	heading.textContent = r.heading;
	for (const m of r.missed) {
		const it = data.items[m.item], li = document.createElement('li');
		if (m.number) {
			const a = document.createElement('a');
			a.href = `#q${m.number}`;
			a.className = 'tall';
			a.textContent = `Question ${m.number}`;
			li.append(a, ' ');
		}
		if (m.alone) {
			const b = document.createElement('b');
			b.className = 'alone';
			b.textContent = 'this alone fails';
			li.append(b, ' ');
		}
		li.append(m.number ? it.words : `${it.words} Right: ${it.answer}`);
		list.append(li);
	}
	if (r.questions) stage.querySelector('[data-questions]').append(...r.questions);
	const who = stage.querySelector('#who'), code = stage.querySelector('#code'), at = new Date();
	const write = () => {
		const name = tidy(who.value);
		code.textContent = name ? codeOf({ ...r.code, who: name, digest: data.digest, revision: data.revision, at }) : 'It stands here as soon as there is a name or a number.';
		code.classList.toggle('coded', name !== '');
	};
	who.addEventListener('input', write);
	write();
	title.focus();
}
