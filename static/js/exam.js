// An exam under way: keeps each answer as it is given, and lets the clock run in sight.
// Without this script the page has a button that keeps the answers so far, and says until
// when there is time.
//
// A form with data-exam is sent to its own address with do=keep and quiet=yes. An element
// with data-kept says what is kept, the button data-keep goes. data-clock holds the
// seconds that are left (data-left), what to say when they are over (data-over), and the
// time in an element with role="timer".

for (const form of document.querySelectorAll('form[data-exam]')) {
	keep(form);
	run(form);
}

function keep(form) {
	const says = form.querySelector('[data-kept]');
	const items = form.querySelectorAll('.question').length;
	let waiting = 0, sending = false, again = false, leaving = false;
	for (const b of form.querySelectorAll('[data-keep]')) b.hidden = true;

	const answers = () => {
		const all = new URLSearchParams(new FormData(form));
		all.set('do', 'keep');
		all.set('quiet', 'yes');
		return all;
	};

	async function send() {
		waiting = 0;
		if (sending) {
			again = true;
			return;
		}
		sending = true;
		again = false;
		try {
			const answer = await fetch(form.action, { method: 'POST', body: answers() });
			if (answer.status === 204) {
				says.textContent = `Kept: ${count(form)} of ${items} answered`;
			} else if (answer.redirected || answer.status === 404) {
				location.reload(); // it was handed in, left or removed elsewhere
			} else {
				throw new Error(String(answer.status));
			}
		} catch {
			if (!leaving) says.textContent = 'Not kept yet: the program does not answer. It is tried again.';
			later(5000);
		}
		sending = false;
		if (again) later(0);
	}

	function later(ms) {
		clearTimeout(waiting);
		waiting = setTimeout(send, ms);
	}

	form.addEventListener('change', () => later(0));
	form.addEventListener('input', () => later(600));
	form.addEventListener('submit', () => {
		leaving = true;
		clearTimeout(waiting);
	});
	addEventListener('pagehide', () => {
		if (waiting && !leaving) navigator.sendBeacon(form.action, answers());
	});
}

// count is how many questions have an answer, as the program counts them.
function count(form) {
	return [...form.querySelectorAll('.question')].filter((q) => [...q.querySelectorAll('input')].some((i) => (i.type === 'radio' ? i.checked : i.value.trim() !== ''))).length;
}

function run(form) {
	const clock = form.querySelector('[data-clock]');
	const timer = clock?.querySelector('[role="timer"]');
	if (!timer) return;
	const end = performance.now() + Number(clock.dataset.left) * 1000;
	const tick = () => {
		const left = Math.max(0, Math.ceil((end - performance.now()) / 1000));
		if (left === 0) {
			const b = document.createElement('b');
			b.textContent = clock.dataset.over;
			clock.replaceChildren(b);
			clock.classList.add('over');
			form.querySelector('.runs')?.remove();
			clearInterval(ticking);
			return;
		}
		timer.textContent = left < 60 ? `${left}\u202fs` : `${Math.floor(left / 60)}\u202fmin ${left % 60}\u202fs`;
		clock.classList.toggle('short', left < 60);
	};
	const ticking = setInterval(tick, 250);
	tick();
}
