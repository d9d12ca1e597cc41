// What stands below the help of each command: examples, and what the exit codes mean.

export const exits = `
Exit codes
  0   all is well (there may be queries for a person to look at)
  1   something must be put right first; no output was changed
  2   the command was not understood
  3   writing broke off; the old output is untouched
  70  a fault of this program`;

export const helpAfter = {
  program: `
Examples
  splitpin intake                        a new machine: a dozen questions, and its first sheets
  splitpin add my-bike wheel-rear-out    plan a job, ready to print
  splitpin fill my-bike rear-wheel       type in what was written on its sheets
  splitpin check my-bike                 look for mistakes
  splitpin build my-bike                 make the binder in out/my-bike
  splitpin print my-bike torque-table    one sheet, now
  splitpin serve my-bike                 read it in a browser while you write
  splitpin next my-bike                  the likeliest faults, and the next test
  splitpin evening my-bike               what can be done tonight, and what would free most
  splitpin to-get my-bike                what to buy, by supplier
  splitpin work                          the calculations of the trade
  splitpin handover my-bike              a package for the next owner; verify looks whether one is whole
  splitpin adopt pipit-package.zip       takes such a package over: its history stays, you go on
${exits}`,
  intake: `
Examples
  splitpin intake                                    asks, and makes a folder named after the machine
  splitpin intake my-bike --make Larkmoor --model 'Pipit 175'
  splitpin intake my-bike --answers answers.yaml     asks nothing; what is not in the file is left for later

An empty line, ? or “later” leaves a question for later: it stands as ? in machine.yaml, and until it is known
what is for any kind of machine is printed. Through a pipe, each line answers the next question; an answer that
is not understood is kept in its words in the record of the intake, and what was understood of it counts. The
folder is made whole or not at all; a folder that is there already is never touched.
${exits}`,
  take: `
Examples
  splitpin take my-bike teardown.pdf                 a form filled on a tablet, back into its record
  splitpin take my-bike top-end-answers.txt          what was written on the telephone, in the page of a job
  splitpin take my-bike old-log.csv                  shows how it would be read, asks, makes records
  splitpin take my-bike old-log.csv --show --how dates=day-month-year --how columns=date=1,text=3+4
  splitpin take my-bike ~/photos/saturday            dated photos; those after a photographed tag go under its bag

A log: --how columns, dates (day-month-year, month-day-year, year-month-day), century (19, 20), decimal (point,
comma), unit (mi, km), currency, separator (comma, semicolon, tab, pipe), per (row, day), kind, undated
(stop, leave-out). Photos: --how job, undated. A form or a telephone: --how wins (form, record, both), where the
record was changed since and says otherwise. What could mean two things is asked, or must be said; it is never
guessed. Without --yes nothing is written before you have seen it and agreed.
${exits}`,
  build: `
Examples
  splitpin build my-bike
  splitpin build my-bike --out /media/stick/my-bike --paper letter
  splitpin build workshop                every machine in the folder, each in out/workshop/<machine>

The binder is made beside its folder and swapped in when it is whole: until then, and when anything
is wrong, the old one stays. A folder that this program did not make is never touched.
${exits}`,
  check: `
Examples
  splitpin check my-bike
  splitpin check my-bike --today 2027-04-01    what will be due then
  splitpin check my-bike --watch               after every change, a line a problem: file:line:column: …
${exits}`,
  print: `
Examples
  splitpin print my-bike torque-table
  splitpin print my-bike top-end               every sheet of that job
  splitpin print my-bike all --both-sides      every sheet, for a printer that turns the leaf
  splitpin print my-bike teardown --form       to fill in on a screen; splitpin take reads it back
  splitpin print my-bike tags --paper tag      each tag on a tag of 60 by 120 mm; card: a bank card
  splitpin print my-bike list                  the names of all sheets

A mistake in another record does not keep a sheet back: the sheet names what was left out, and why.
${exits}`,
  serve: `
Examples
  splitpin serve my-bike
  splitpin serve workshop --port 9000
  splitpin serve my-bike --lan           a phone in the same network may read it too, with the key that is printed

Without --lan only this computer can reach it; with it, whoever has the key can read the whole binder, private
values too, until you stop it. Nobody can change anything. A change in a record is shown at once; while something is wrong, the
last good binder stays and the mistake is shown above it. Stop with Ctrl+C.
${exits}`,
  upgrade: `
Examples
  splitpin upgrade my-bike               shows what would change, asks, keeps a copy of each file as it was
  splitpin upgrade my-bike --editor      also lets editors that know YAML complete and check what you write

Only the lines that must change are changed; comments and everything else stay byte for byte. The copies lie
in .before-upgrade/ in the machine folder.
${exits}`,
  work: `
Examples
  splitpin work                                       every calculation, a line each
  splitpin work displacement                          its values, with an example
  splitpin work displacement 'bore=50 mm' 'stroke=44.5 mm' cylinders=2
  splitpin work cranking-pressure --in my-bike        with what the records say
  splitpin work torque-slip --in my-bike fastener=cylinder-head-nut

With --in, these choose between several things of the machine: fastener= (its id), item= (a limit, a
setting or another reading), at= (beginning of a position), wheel= (front or rear), in-gear= (its number),
wrench= (an instrument). What was taken, and from where, is said.
${exits}`,
} as const;
