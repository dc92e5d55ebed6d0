// What is to be asked of the program, in order: the commands of buttons, which
// are never given up, and then whether the entries changed since they were sent.

// A queue holds commands of the form {do, paste}. Fields are known by name.
export class Queue {
  #commands = [];
  #since = new Set(); // fields changed since the last question was sent
  #stale = false; // the last answer is older than the entries

  // add puts a command behind those that wait.
  add(command) {
    this.#commands.push(command);
  }

  // changed says that a field was typed in.
  changed(name) {
    this.#since.add(name);
    this.#stale = true;
  }

  // spoiled says that the entries were never answered.
  spoiled() {
    this.#stale = true;
  }

  get waiting() {
    return this.#commands.length > 0;
  }

  get stale() {
    return this.#stale;
  }

  // send gives the question to be sent now. A command stays until it is answered.
  send() {
    this.#since.clear();
    this.#stale = false;
    return this.#commands[0] ?? { do: "recompute" };
  }

  // answered takes the first command off. What was changed meanwhile, and the
  // commands behind it, follow the rows that it moved. It gives the fields that
  // were changed as [name before, name now].
  answered(done) {
    if (!done) {
      this.#commands.shift();
      return [];
    }
    const { do: what } = this.#commands.shift();
    this.#commands = this.#commands.map((c) => ({ ...c, do: commandAfter(what, c.do) })).filter((c) => c.do);
    const pairs = [...this.#since].map((name) => [name, nameAfter(what, name)]);
    this.#since = new Set(pairs.map(([, now]) => now).filter(Boolean));
    return pairs.filter(([, now]) => now);
  }
}

// rowAfter is the place of a row after a command; null when it is gone.
function rowAfter(what, base, row) {
  const [verb, list, digits] = what.split(" ");
  const at = Number(digits);
  if (list !== base) return row;
  if (verb === "remove") return row === at ? null : row > at ? row - 1 : row;
  if (verb === "repeat") return row > at ? row + 1 : row;
  const other = verb === "up" ? at - 1 : verb === "down" ? at + 1 : at;
  return row === at ? other : row === other ? at : row;
}

// nameAfter is the name of a field after a command; empty when its row is gone.
function nameAfter(what, name) {
  const found = /^(.*?)\[(\d+)\](.*)$/.exec(name);
  if (!found) return name;
  const row = rowAfter(what, found[1], Number(found[2]));
  return row === null ? "" : `${found[1]}[${row}]${found[3]}`;
}

// commandAfter is a command that was given before another one was done; empty
// when its row is gone.
function commandAfter(what, command) {
  const [verb, base, digits] = command.split(" ");
  if (!["remove", "repeat", "up", "down"].includes(verb)) return command;
  const row = rowAfter(what, base, Number(digits));
  return row === null ? "" : `${verb} ${base} ${row}`;
}
