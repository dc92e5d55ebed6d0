// Record codes: what somebody reads from a device and types in at the bench. The form
// and the check figure are told in press/drill, at Code.

const asciiUpper = (s) => s.replace(/[a-z]/g, (c) => c.toUpperCase());

function checkFigure(text) {
	let sum = 0;
	for (const c of text) sum = (sum * 31 + c.codePointAt(0)) % 9973;
	return String(sum).padStart(4, '0');
}

// tidy is a name as records keep it.
export const tidy = (name) => name.normalize('NFC').replace(/[\p{Cc}\uFFFD]/gu, ' ').trim().split(/\s+/).join(' ');

// codeOf writes the code of a result: its level, or the exam of a role.
export function codeOf(r) {
	let kind = `E${r.role}`, outcome = 'P';
	if (r.level) [kind, outcome] = [`P${r.level}`, 'D'];
	else if (!r.passed) outcome = `N${r.overTime ? 'T' : ''}${r.grave ? 'G' : ''}`;
	const head = [kind, outcome, r.revision || '0', asciiUpper(r.digest), `${r.right}/${r.items}/${r.needed}`, r.seed, Math.min(999999, Math.floor(r.seconds)), dayOf(r.at)].join('-');
	return `${head}-${checkFigure(`${head} ${asciiUpper(r.who)}`)} ${r.who}`;
}

// dayOf is the day by the clock of this device.
function dayOf(at) {
	const two = (n) => String(n).padStart(2, '0');
	return `${at.getFullYear()}${two(at.getMonth() + 1)}${two(at.getDate())}`;
}
