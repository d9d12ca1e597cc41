// Made by src/tools/browser-scripts.ts from src/bench/next-test.ts; not edited by hand.
/* oxlint-disable */
'use strict';
(() => {
  // src/calc/faults/odds-table.ts
  var silent = 'silent';
  var engineRuns = 'engine=runs';
  var engineStuck = 'engine=will-not-turn';
  function refParts(ref) {
    const at = ref.indexOf('=');
    return at < 0 ? { test: ref, outcome: '' } : { test: ref.slice(0, at), outcome: ref.slice(at + 1) };
  }
  function outcomeOf(table, ref) {
    return indexOf(table).outcomes.get(ref);
  }
  function testOf(table, id) {
    return indexOf(table).tests.get(id);
  }
  function rowsWith(table, ref) {
    return indexOf(table).rows.get(ref) ?? [];
  }
  var known = /* @__PURE__ */ new WeakMap();
  function indexOf(table) {
    const before = known.get(table);
    if (before !== void 0) return before;
    const outcomes = /* @__PURE__ */ new Map();
    for (const test of table.tests)
      for (const one of test.outcomes) {
        const ref = `${test.id}=${one.id}`;
        if (!outcomes.has(ref)) outcomes.set(ref, one);
      }
    const rows = /* @__PURE__ */ new Map();
    for (const [index, row] of table.together.entries())
      for (const ref of new Set(row.saw)) rows.set(ref, [...(rows.get(ref) ?? []), index]);
    const made = { tests: new Map(table.tests.map((test) => [test.id, test])), outcomes, rows };
    known.set(table, made);
    return made;
  }

  // src/calc/faults/evidence.ts
  var noPull = { up: 1, down: 1 };
  function pulled(pull, times, from) {
    if (times > pull.up) return { ...pull, up: times, upFrom: from };
    if (times < pull.down) return { ...pull, down: times, downFrom: from };
    return pull;
  }
  function moved({ up, down }, times) {
    const product = up * down;
    if (product <= 0) return void 0;
    if (times > up) return (times * down) / product;
    return times < down ? (up * times) / product : 1;
  }
  function weigh(table, refs) {
    const seen = new Set([...refs].sort(byText));
    const pulls = /* @__PURE__ */ new Map();
    for (const ref of seen) {
      const test = testOf(table, refParts(ref).test);
      if (test !== void 0) addTo(pulls, test, outcomeOf(table, ref)?.says ?? [], ref);
    }
    const rows = new Set(
      table.together.flatMap((row, index) => (row.saw.every((ref) => seen.has(ref)) ? [index] : [])),
    );
    const times = /* @__PURE__ */ new Map();
    const multiply = (cause, by) => times.set(cause, (times.get(cause) ?? 1) * by);
    for (const byCause of pulls.values()) for (const [cause, { up, down }] of byCause) multiply(cause, up * down);
    for (const index of rows) for (const { cause, times: by } of table.together[index]?.says ?? []) multiply(cause, by);
    const speaks = table.causes.some(({ id }) => (times.get(id) ?? 1) > 1);
    return { table, seen, pulls, rows, times, speaks };
  }
  function addTo(pulls, test, says, ref) {
    const byCause = pulls.get(test.looksAt) ?? /* @__PURE__ */ new Map();
    pulls.set(test.looksAt, byCause);
    for (const { cause, times } of says) byCause.set(cause, pulled(byCause.get(cause) ?? noPull, times, ref));
  }
  function partsOf(evidence, cause) {
    const single = [...evidence.pulls.values()].flatMap((byCause) => {
      const pull = byCause.get(cause);
      if (pull === void 0) return [];
      return [
        ...(pull.upFrom === void 0 ? [] : [{ from: pull.upFrom, times: pull.up }]),
        ...(pull.downFrom === void 0 ? [] : [{ from: pull.downFrom, times: pull.down }]),
      ];
    });
    const rows = [...evidence.rows].flatMap((index) => {
      const row = evidence.table.together[index];
      const says = row?.says.find((one) => one.cause === cause);
      return row === void 0 || says === void 0 ? [] : [{ from: row.saw.join(' + '), times: says.times }];
    });
    return [...single, ...rows].sort((a, b) => force(b) - force(a) || byText(a.from, b.from));
  }
  function force({ times }) {
    return times === 0 ? Infinity : Math.abs(Math.log(times));
  }
  function byText(a, b) {
    if (a === b) return 0;
    return a < b ? -1 : 1;
  }

  // src/calc/faults/cause-odds.ts
  var words = [
    ['almost certain', 16],
    ['very likely', 4],
    ['likely', 1],
    ['possible', 0.2],
  ];
  function wordOf(odds) {
    if (odds === 0) return 'ruled out';
    return words.find(([, least]) => odds >= least)?.[0] ?? 'unlikely';
  }
  function causeOdds(evidence) {
    return evidence.table.causes
      .map(({ id, odds }) => {
        const now = odds * (evidence.times.get(id) ?? 1);
        return { id, before: odds, now, word: wordOf(now), parts: partsOf(evidence, id) };
      })
      .sort((a, b) => Number(isRaised(b)) - Number(isRaised(a)) || b.now - a.now);
  }
  function chanceOf(odds) {
    return odds / (1 + odds);
  }
  function isRaised({ before, now }) {
    return now > before;
  }

  // src/calc/faults/contradictions.ts
  function contradictions(table, refs) {
    const seen = [...new Set(refs)].filter((ref) => refParts(ref).outcome !== silent).sort(byText);
    return seen.flatMap((one, index) =>
      seen.slice(index + 1).flatMap((other) => {
        const sameTest = refParts(one).test === refParts(other).test;
        return sameTest || excludesOther(table, one, other) || excludesOther(table, other, one) ? [[one, other]] : [];
      }),
    );
  }
  function excludesOther(table, one, other) {
    return outcomeOf(table, one)?.notWith.includes(other) === true;
  }
  function fits(table, ref, refs) {
    const { test } = refParts(ref);
    return refs.every((other) => {
      if (refParts(other).outcome === silent || other === ref) return true;
      return refParts(other).test !== test && !excludesOther(table, ref, other) && !excludesOther(table, other, ref);
    });
  }

  // src/calc/faults/weights.ts
  var startingOdds = {
    'long stored': { 'very likely': 8 / 16, likely: 4 / 16, occasional: 2 / 16, rare: 1 / 16 },
    'lately running': { 'very likely': 8 / 32, likely: 4 / 32, occasional: 2 / 32, rare: 1 / 32 },
  };
  var strengths = {
    shows: 50,
    stronglyFor: 8,
    for: 3,
    against: 1 / 3,
    stronglyAgainst: 1 / 8,
    excludes: 0,
  };
  var afterCure = 1 / 8;
  var relevance = { most: 3, silent: 0.02, against: 0.01 };
  var surestUnseen = 3;

  // src/calc/faults/information.ts
  function knownFrom(evidence, running = false) {
    const odds = new Map(evidence.table.causes.map((cause) => [cause.id, questionOf(evidence, cause)]));
    const seen = running ? [...evidence.seen, engineRuns] : [...evidence.seen];
    return { odds, evidence, seen };
  }
  function questionOf(evidence, { id, odds }) {
    const now = odds * (evidence.times.get(id) ?? 1);
    return partsOf(evidence, id).some(({ times }) => times >= strengths.shows) ? now : Math.min(now, surestUnseen);
  }
  function expectedOf(known2, test) {
    const open = test.outcomes.filter((outcome) =>
      fits(known2.evidence.table, `${test.id}=${outcome.id}`, known2.seen),
    );
    const each = open.map((outcome) => afterOutcome(known2, test, outcome));
    const whole = each.reduce((sum, { share }) => sum + share, 0);
    if (whole === 0) return [];
    const touched = new Set(each.flatMap(({ chances }) => [...chances.keys()]));
    const chanceAfter = (one, cause) => one.chances.get(cause) ?? chanceOf(known2.odds.get(cause) ?? 0);
    const tells = each.map(() => 0);
    for (const cause of touched) {
      const mean = each.reduce((sum, one) => sum + (one.share / whole) * chanceAfter(one, cause), 0);
      const weight = weightOf(known2.evidence, cause);
      for (const [index, one] of each.entries())
        tells[index] = (tells[index] ?? 0) + weight * divergence(chanceAfter(one, cause), mean);
    }
    return each.map(({ outcome, share }, index) => ({ outcome, chance: share / whole, tells: tells[index] ?? 0 }));
  }
  function afterOutcome(known2, test, outcome) {
    let { share } = outcome;
    const chances = /* @__PURE__ */ new Map();
    for (const [cause, factor] of factorsOf(known2.evidence, test, outcome)) {
      const odds = known2.odds.get(cause) ?? 0;
      if (odds === 0) continue;
      share *= 1 - chanceOf(odds) + chanceOf(odds) * factor;
      chances.set(cause, chanceOf(odds * factor));
    }
    return { outcome: outcome.id, share, chances };
  }
  function factorsOf(evidence, test, outcome) {
    const factors = /* @__PURE__ */ new Map();
    const already = evidence.pulls.get(test.looksAt);
    for (const { cause, times } of outcome.says) {
      const by = moved(already?.get(cause) ?? noPull, times);
      if (by !== void 0) factors.set(cause, (factors.get(cause) ?? 1) * by);
    }
    const ref = `${test.id}=${outcome.id}`;
    for (const index of rowsWith(evidence.table, ref)) {
      const row = evidence.table.together[index];
      if (row === void 0 || evidence.rows.has(index)) continue;
      if (!row.saw.every((one) => one === ref || evidence.seen.has(one))) continue;
      for (const { cause, times } of row.says) factors.set(cause, (factors.get(cause) ?? 1) * times);
    }
    return factors;
  }
  function weightOf(evidence, cause) {
    if (!evidence.speaks) return 1;
    const times = evidence.times.get(cause) ?? 1;
    if (times > 1) return Math.min(relevance.most, (Math.log(times) / Math.log(strengths.stronglyFor)) ** 2);
    return times === 1 ? relevance.silent : relevance.against;
  }
  function divergence(after, before) {
    const part2 = (a, b) => (a === 0 ? 0 : a * Math.log(a / b));
    return part2(after, before) + part2(1 - after, 1 - before);
  }

  // src/calc/faults/next-tests.ts
  var nothing = 1e-9;
  function nextTests(evidence, turned = false) {
    const { table, seen } = evidence;
    const done = new Set([...seen].map((ref) => refParts(ref).test));
    const running = runs(table, [...seen]);
    const ran = seenRunning(table, [...seen]);
    const known2 = knownFrom(evidence, ran);
    const isBehind = (test) => (test.heldUntil === 'turned' ? turned : test.heldUntil === 'run' && ran);
    const heldBy = (test) => (isBehind(test) ? [] : test.held);
    const open = table.tests
      .filter((test) => !test.notice && !done.has(test.id) && isOpen(table, test, seen, done, running, ran))
      .map((test) => ({ test, rank: rankOf(known2, test) }))
      .filter(({ test, rank }) => test.free || rank.tells > nothing);
    const apart = open
      .flatMap(({ test, rank }) => (test.apart === void 0 ? [] : [{ ...rank, apart: test.apart }]))
      .sort((a, b) => b.worth - a.worth);
    const ranked = open.filter(({ test }) => test.apart === void 0);
    const free = ranked
      .filter(({ test }) => test.free && heldBy(test).length === 0)
      .sort((a, b) => b.rank.worth - a.rank.worth);
    const rest = ranked.filter(({ test }) => !test.free).sort((a, b) => b.rank.worth - a.rank.worth);
    const next = rest.filter(({ test }) => heldBy(test).length === 0).map(({ rank }) => rank);
    const held = [...ranked.filter(({ test }) => test.free && heldBy(test).length > 0), ...rest]
      .filter(({ test }) => heldBy(test).length > 0)
      .map(({ test, rank }) => ({
        ...rank,
        held: heldBy(test),
        place: 1 + next.filter((one) => one.worth >= rank.worth).length,
      }));
    const offered = [...free, ...rest].filter(({ test }) => test.held.length > 0 && isBehind(test));
    const behind = new Map(offered.map(({ test }) => [test.held[0] ?? '', test.held]));
    return { looks: free.map(({ rank }) => rank), next, held, apart, behind: [...behind.values()] };
  }
  function rankOf(known2, test) {
    const expected = expectedOf(known2, test);
    const tells = expected.reduce((sum, one) => sum + one.chance * one.tells, 0);
    return { id: test.id, tells, effort: test.effort, worth: tells / test.effort, expected };
  }
  function isOpen(table, test, seen, done, running, ran) {
    if (test.running && !running) return false;
    if (ran && isOfDeadEngine(table, test)) return false;
    if (test.turning && seen.has(engineStuck) && !test.when.includes(engineStuck)) return false;
    if (test.unless.some((ref) => seen.has(ref))) return false;
    if (test.when.length > 0 && !test.when.some((ref) => seen.has(ref))) return false;
    return test.after.every((id) => done.has(id) || testOf(table, id) === void 0);
  }
  function runs(table, seen) {
    return seenRunning(table, seen) || (table.runs && fits(table, engineRuns, seen));
  }
  function seenRunning(table, seen) {
    return seen.some((ref) => outcomeOf(table, ref)?.running === true);
  }
  function saysTurned(table, refs) {
    return refs.some((ref) => {
      const outcome = outcomeOf(table, ref);
      const test = testOf(table, refParts(ref).test);
      return outcome !== void 0 && (test?.turns === true || outcome.running === true);
    });
  }
  function isOfDeadEngine(table, test) {
    return test.outcomes.every(({ id }) => !fits(table, `${test.id}=${id}`, [engineRuns]));
  }

  // src/bench/next-test-answer.ts
  var mostCauses = 3;
  var mostTests = 5;
  var mostLooks = 3;
  var leastToName = 0.1;
  var possible = 0.2;
  function answer(data2, seen) {
    const words2 = (ref) =>
      ref
        .split(' + ')
        .map((one) => wordsOf(data2, one))
        .join(' + ');
    const impossible = contradictions(data2.table, seen).map(
      ([one, other]) => `${words2(one)} \u2014 and \u2014 ${words2(other)}`,
    );
    const none = { impossible, stops: [], groups: [], looks: [], next: [], held: [], apart: [], behind: [] };
    if (impossible.length > 0) return none;
    const evidence = weigh(data2.table, seen);
    const now = seen.filter((ref) => !data2.seen.includes(ref));
    const ranked = nextTests(evidence, data2.table.runs || saysTurned(data2.table, now));
    const tests = new Map(data2.tests.map((test) => [test.id, test]));
    const named = (ids) => ids.flatMap(({ id }) => tests.get(id) ?? []);
    const odds = causeOdds(evidence).filter(({ now: now2 }) => now2 >= leastToName);
    const groups = [...new Set(data2.causes.map(({ group }) => group))].map((group) => {
      const mine = new Map(data2.causes.filter((cause) => cause.group === group).map((cause) => [cause.id, cause]));
      const some = odds.filter(({ id }) => mine.has(id));
      const raised = some.filter(({ now: after, before }) => after > before);
      const silentOnes = evidence.speaks ? some.filter((one) => one.now >= possible).slice(0, 1) : some;
      const causes = (raised.length > 0 ? raised : silentOnes).slice(0, mostCauses).flatMap(({ id, word }) => {
        const cause = mine.get(id);
        const speaking = partsOf(evidence, id).filter(({ times }) => times > 1);
        const why = speaking.map(({ from }) => words2(from)).join('; ');
        return cause === void 0 ? [] : [{ name: cause.name, word, why, cure: cause.cure }];
      });
      return { group, causes, raised: raised.length > 0 };
    });
    return {
      impossible,
      stops: seen.flatMap((ref) => stopOf(data2, ref)),
      groups: groups.filter(({ causes }) => causes.length > 0).sort((a, b) => Number(b.raised) - Number(a.raised)),
      looks: named(ranked.looks).slice(0, mostLooks),
      next: named(ranked.next).slice(0, mostTests),
      behind: ranked.behind.map(([point = '']) => point),
      apart: ranked.apart
        .slice(0, mostTests)
        .map(({ id, apart }) => ({ name: tests.get(id)?.short ?? id, off: apart })),
      held: ranked.held
        .slice(0, mostTests)
        .map(({ id, held }) => ({ name: tests.get(id)?.short ?? id, by: held[0] ?? '' })),
    };
  }
  function outcomeIn(data2, ref) {
    const { test: id, outcome } = refParts(ref);
    const test = data2.tests.find((one) => one.id === id);
    return { test, outcome: test?.outcomes.find((one) => one.id === outcome) };
  }
  function wordsOf(data2, ref) {
    const { test, outcome } = outcomeIn(data2, ref);
    const name = test?.short ?? ref;
    const words2 = outcome?.words ?? 'told nothing';
    return words2.toLowerCase().startsWith(name.toLowerCase()) ? words2 : `${name}: ${words2}`;
  }
  function stopOf(data2, ref) {
    const { outcome } = outcomeIn(data2, ref);
    return outcome === void 0 || outcome.stop === '' ? [] : [`${wordsOf(data2, ref)}: ${outcome.stop}.`];
  }

  // src/bench/next-test-data.ts
  function readBenchData(value) {
    return isBenchData(value) ? value : void 0;
  }
  function isBenchData(value) {
    return (
      typeof value === 'object' &&
      value !== null &&
      'table' in value &&
      'tests' in value &&
      'causes' in value &&
      'seen' in value
    );
  }

  // src/bench/next-test.ts
  var bench = document.querySelector('#bench');
  var data = readBenchData(window.splitpinBench);
  if (bench !== null && data !== void 0) begin(bench, data);
  function begin(bench2, data2) {
    const chosen = /* @__PURE__ */ new Map();
    for (const ref of data2.seen) chosen.set(ref.split('=')[0] ?? '', ref.split('=')[1] ?? '');
    const result = part('div', '');
    result.setAttribute('role', 'status');
    const selects = /* @__PURE__ */ new Map();
    const choose = (test, outcome) => {
      if (outcome === '') chosen.delete(test);
      else chosen.set(test, outcome);
      const select = selects.get(test);
      if (select !== void 0) select.value = outcome;
      show();
    };
    const show = () => {
      const seen = [...chosen].map(([test, outcome]) => `${test}=${outcome}`);
      result.replaceChildren(...answerParts(answer(data2, seen), choose), chosenPart(data2, chosen, choose));
    };
    const again = button('As the records say', () => {
      chosen.clear();
      for (const select of selects.values()) select.value = '';
      for (const ref of data2.seen) choose(ref.split('=')[0] ?? '', ref.split('=')[1] ?? '');
      show();
    });
    const pick = (title, tests) => {
      const details = part('details', '');
      details.append(part('summary', title), ...tests.map((test) => selectFor(test, chosen, choose, selects)));
      return details;
    };
    bench2.append(
      part('h2', 'Try outcomes'),
      part(
        'p',
        'Choose what was seen, or press an outcome of a test below; nothing is kept and nothing leaves this page.',
      ),
      pick(
        'What is noticed',
        data2.tests.filter((test) => test.notice),
      ),
      pick(
        'What was tried',
        data2.tests.filter((test) => !test.notice),
      ),
      again,
      result,
    );
    bench2.hidden = false;
    document.querySelector('#page h1')?.after(wayToBench());
    show();
  }
  function wayToBench() {
    const link = document.createElement('a');
    link.href = '#bench';
    link.textContent = 'Try outcomes on this page';
    const line = part('p', '', 'to-print');
    line.append(link);
    return line;
  }
  function selectFor(test, chosen, choose, selects) {
    const label = part('label', test.name);
    const select = document.createElement('select');
    const options = [
      ['', '\u2014'],
      ...test.outcomes.map(({ id, words: words2 }) => [id, words2]),
      [silent, 'Done, told nothing'],
    ];
    for (const [value = '', words2 = ''] of options) select.add(new Option(words2, value));
    select.value = chosen.get(test.id) ?? '';
    select.addEventListener('change', () => choose(test.id, select.value));
    selects.set(test.id, select);
    label.append(select);
    return label;
  }
  function chosenPart(data2, chosen, choose) {
    const list = part('ul', '');
    for (const [id, saw] of chosen) {
      const item = part('li', `${wordsOf(data2, `${id}=${saw}`)} `);
      item.append(button('take back', () => choose(id, '')));
      list.append(item);
    }
    const box = part('div', '');
    box.append(part('h3', chosen.size === 0 ? 'Nothing seen yet' : 'Seen'), list);
    return box;
  }
  function answerParts(found, choose) {
    if (found.impossible.length > 0)
      return [part('h3', 'These cannot all be so; look again'), listOf(found.impossible)];
    return [
      ...found.stops.map((stop) => part('p', `WARNING: ${stop}`, 'stop')),
      part('h3', 'What leads, and why'),
      ...found.groups.flatMap(({ group, causes }) => [
        part('h4', group),
        listOf(
          causes.map(
            ({ name, word, why, cure }) => `${name} \u2014 ${word}${why === '' ? '' : `: ${why}`}. Usual cure: ${cure}`,
          ),
        ),
      ]),
      ...testsPart('Looks that cost nothing', found.looks, choose),
      ...testsPart('Next', found.next, choose),
      ...found.behind.map((point) =>
        part(
          'p',
          `Look first: ${point}. The engine is past it by what was seen, and the records do not prove it.`,
          'stop',
        ),
      ),
      ...(found.held.length === 0
        ? []
        : [part('h3', 'Held'), listOf(found.held.map(({ name, by }) => `${name}: waits for \u201C${by}\u201D`))]),
      ...(found.apart.length === 0
        ? []
        : [
            part('h3', 'Put off: not to be tried as it stands'),
            listOf(found.apart.map(({ name, off }) => `${name}: ${off}`)),
          ]),
      part('p', 'All strengths are judgement; the maker\u2019s book goes first.'),
    ];
  }
  function testsPart(title, tests, choose) {
    if (tests.length === 0) return [];
    const list = part('ol', '');
    for (const test of tests) {
      const item = part('li', '');
      const outcomes = part('p', '', 'outcomes');
      for (const { id, words: words2 } of test.outcomes) outcomes.append(button(words2, () => choose(test.id, id)));
      outcomes.append(button('Done, told nothing', () => choose(test.id, silent)));
      item.append(
        part('strong', test.name),
        part('p', test.how),
        ...test.cautions.map((one) => part('p', one, 'grade')),
        outcomes,
      );
      list.append(item);
    }
    return [part('h3', title), list];
  }
  function part(tag, text, className = '') {
    const element = document.createElement(tag);
    element.textContent = text;
    if (className !== '') element.className = className;
    return element;
  }
  function listOf(texts) {
    const list = part('ul', '');
    list.append(...texts.map((text) => part('li', text)));
    return list;
  }
  function button(words2, press) {
    const made = document.createElement('button');
    made.type = 'button';
    made.textContent = words2;
    made.addEventListener('click', press);
    return made;
  }
})();
