"""Hostile files for hostile_test.py: each a name, a function that gives the bytes, and a pattern of the complaint: its place and
words. `JOB` begins an honest job, so that what follows is met by the parser in the middle of its work."""
MIB = 1 << 20
LIMIT = 16 * MIB
JOB = b"format: 1\njob: x\nbase_metal: S235\nweldments:\n  - name: w\n    joints:\n"
JOINT = b"      - {weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm}\n"


def filled(piece, size=LIMIT - MIB):
    return piece * (size // len(piece))


def laughs(levels=40):
    lines = [b"a0: &a0 [x, x]"] + [b"a%d: &a%d [*a%d, *a%d]" % (n, n, n - 1, n - 1) for n in range(1, levels)]
    return b"format: 1\n" + b"\n".join(lines) + b"\n"


def staircase(levels):
    return b"".join(b" " * n + b"a:\n" for n in range(levels))


NESTED = [
    ("brackets", lambda: b"[" * MIB, r":1:\d+: error: (too many lists|this '\[' is not closed|a line longer)"),
    ("brackets of many lines", lambda: filled(b"[" * 1000 + b"\n"), r":1:1: error: more than 256 kB follow before this comes to an end"),
    ("braces", lambda: b"format: 1\njob: " + filled(b"{a: " * 1000 + b"\n"), r":2:\d+: error: too many lists"),
    ("dashes", lambda: filled(b"- " * 30000 + b"\n", 2 * MIB), r":1:65: error: too many lists and maps inside each other"),
    ("complex keys", lambda: filled(b"? " * 30000 + b"\n", 2 * MIB), r":1:\d+: error: "),
    ("a staircase of keys", lambda: staircase(3000), r":33:33: error: too many lists and maps inside each other"),
    ("33 levels", lambda: b"format: 1\njob: " + b"[" * 32 + b"]" * 32 + b"\n", r":2:37: error: too many lists.*at most 32 levels"),
    ("mixed brackets after a joint", lambda: JOB + JOINT + b"      - " + b"[{a: " * 4000, r":8:\d+: error: "),
]
ALIASES = [
    ("laughing aliases", lambda: laughs(), r":2:5: error: anchors"),
    ("an alias of itself", lambda: b"format: 1\njob: &a [*a]\n", r":2:6: error: anchors"),
    ("a million aliases", lambda: b"format: 1\nx: &a 1\n" + filled(b"- *a\n", 5 * MIB), r": error: "),
    ("merge keys", lambda: b"format: 1\na: &a {b: 1}\nc:\n  <<: *a\n", r":2:4: error: anchors"),
]
LONG = [
    ("a plain text in one line", lambda: b"format: 1\njob: " + b"x" * (15 * MIB), r":2:1: error: a line longer than 64 kB; break it"),
    ("a plain text of many lines", lambda: b"format: 1\njob: x\n" + filled(b"  word word word word\n"), r":2:1: error: more than 256 kB follow.*; .*shorten a long text"),
    ("double quotes of many lines", lambda: b'format: 1\njob: "x\n' + filled(b"  word word\n") + b'"\n', r":2:1: error: more than 256 kB follow.*; .*shorten a long text"),
    ("single quotes of many lines", lambda: b"format: 1\njob: '\n" + filled(b"  ''\n") + b"'\n", r":2:1: error: more than 256 kB follow.*; .*shorten a long text"),
    ("a block text", lambda: b"format: 1\njob: |\n" + filled(b"  word word word\n"), r":2:1: error: more than 256 kB follow.*; .*shorten a long text"),
    ("a folded text", lambda: b"format: 1\njob: >\n" + filled(b"\n"), r":2:\d+: error: .*(64|256) kB"),
    ("a text of 64 kB and a byte", lambda: b"format: 1\njob: |\n" + b"  a\n" * 32769, r":2:6: error: a text longer than 64 kB; shorten"),
    ("a key of many bytes", lambda: b"format: 1\n" + b"k" * 60000 + b": 1\n", r":2:\d+: error: a \':\' cannot stand here; "),
    ("escapes", lambda: b'format: 1\njob: "' + filled(b"\\x41" * 15000 + b"\\\n") + b'"\n', r":2:1: error: more than 256 kB follow.*; .*shorten a long text"),
    ("over 16 MiB", lambda: b"#" * (LIMIT + 1), r"hostile.yaml: error: is larger than 16 MiB"),
    ("16 MiB of commas in a list", lambda: b"[" + filled(b"1," * 30000 + b"\n"), r":1:1: error: more than 256 kB"),
    ("a list of many lines", lambda: b"format: 1\nquantities: [" + b"1, 1,\n" * 90000 + b"1]\n", r":2:17: error: quantity '1' is given twice"),
    ("a map of many lines", lambda: b"format: 1\njob: {" + b"a: 1,\n" * 90000 + b"b: 1}\n", r":3:1: error: 'a' is given twice"),
]
FLOODS = [
    ("comments", lambda: JOB + filled(b"# nothing to see\n") + JOINT, r": error: .*256 kB"),
    ("one long comment", lambda: JOB + b"#" * MIB + b"\n" + JOINT, r":7:1: error: a line longer than 64 kB"),
    ("blank lines", lambda: JOB + filled(b"\n") + JOINT, r": error: .*256 kB"),
    ("blanks", lambda: JOB + filled(b" " * 60000 + b"\n") + JOINT, r": error: .*256 kB"),
    ("blanks in one line", lambda: JOB + b" " * MIB + b"\n", r":7:1: error: a line longer than 64 kB"),
    ("empty entries", lambda: JOB + filled(b"      -\n", 8 * MIB), r": error: (too many faults|more than|'joints')"),
    ("directives", lambda: filled(b"%YAML 1.2\n", 4 * MIB), r":1:1: error: a line that begins with '%'"),
    ("documents", lambda: b"format: 1\n" + filled(b"---\n", 4 * MIB), r":2:1: error: a second document begins here"),
    ("anchors", lambda: b"format: 1\n" + filled(b"&a ", 50000), r": error: "),
    ("tags", lambda: b"format: 1\n" + filled(b"!a ", 50000), r": error: "),
    ("colons", lambda: b"format: 1\n" + b":" * 60000, r": error: "),
    ("quotes", lambda: b"format: 1\n" + b"'" * 60001, r":2:1: error: "),
    ("open quotes", lambda: b"format: 1\njoints:\n" + filled(b'- "\n', 4 * MIB), r": error: "),
    ("many more than five million values", lambda: JOB.replace(b"joints:", b"x:") + filled(b"      - [" + b"1," * 30000 + b"1]\n"),
     r": error: more than 5 million values"),
]
KEYS = [
    ("one key again and again", lambda: b"format: 1\n" + filled(b"job: x\n", 4 * MIB), r":3:1: error: 'job' is given twice; first on line 2"),
    ("unknown keys", lambda: b"format: 1\n" + b"".join(b"key%06d: 1\n" % n for n in range(400000)), r":2:1: error: unknown key 'key000000'"),
    ("list as key", lambda: b"format: 1\n[a, b]: 1\n", r":2:1: error: a key that is no word"),
    ("unknown keys in each of many joints", lambda: JOB + b"      - {wel: fillet}\n" * 100000, r":7:10: error: unknown key 'wel'"),
]
BYTES = [
    ("zeros", lambda: b"format: 1\njob: a\0b\n", r":2:7: error: a control character \(U\+0000\)"),
    ("nothing but zeros", lambda: b"\0" * (4 * MIB), r":1:1: error: "),
    ("Latin 1", lambda: "format: 1\njob: Träger\n".encode("latin-1"), r":2:8: error: a byte that is no UTF-8; save the file as UTF-8"),
    ("a cut character", lambda: b"format: 1\njob: \xe2\x82\n", r":2:6: error: a byte that is no UTF-8"),
    ("an overlong slash", lambda: b"format: 1\njob: \xc0\xaf\n", r":2:6: error: a byte that is no UTF-8"),
    ("half a surrogate pair", lambda: b"format: 1\njob: \xed\xa0\x80\n", r":2:6: error: a byte that is no UTF-8"),
    ("UTF-16", lambda: "format: 1\n".encode("utf-16"), r"hostile.yaml: error: the file is UTF-16; save it as UTF-8"),
    ("UTF-32", lambda: "format: 1\n".encode("utf-32"), r"hostile.yaml.*: error: "),
    ("two byte-order marks", lambda: b"\xef\xbb\xbf" * 2 + b"format: 1\n", r":1:1: error: a control character \(U\+FEFF\)"),
    ("text turned round", lambda: "format: 1\njob: a\u202eb\n".encode(), r":2:7: error: a control character \(U\+202E\)"),
    ("escape sequences", lambda: b"format: 1\njob: \x1b[2J\n", r":2:6: error: a control character \(U\+001B\)"),
    ("noise", lambda: bytes((n * n * 31 + n // 7) % 256 for n in range(MIB)), r":1:\d+: error: "),
    ("a program", lambda: b"\x7fELF\x02\x01\x01" + b"\0" * 4096, r":1:1: error: "),
    ("an open quote", lambda: b'format: 1\njob: "x\n' + b"a: b\n" * 1000, r":2:6: error: this quote is not closed"),
    ("nothing", lambda: b"", r"hostile.yaml: error: the file is empty"),
    ("a list at the root", lambda: b"- 1\n", r":1:1: error: the file holds no map of keys"),
]
ALL = NESTED + ALIASES + LONG + FLOODS + KEYS + BYTES
HEAD = b"weld,leg,thickness,length\n"
ROW = b"fillet,5 mm,8 mm,240 mm\n"
CSV = [
    ("an open quote", lambda: HEAD + b'"fillet' + filled(ROW, 4 * MIB), r":2:1: error: this quote is not closed"),
    ("quotes", lambda: HEAD + b'"' * 60001, r":2:\d+: error: "),
    ("commas", lambda: HEAD + filled(b"," * 60000 + b"\n"), r": error: (60001 fields under 4|more than a million)"),
    ("short rows", lambda: HEAD + filled(b"x\n", 8 * MIB), r":2:1: error: 1 field under 4 headings"),
    ("headings", lambda: b",".join(b"h%d" % n for n in range(10000)) + b"\n", r":1:\d+: error: more than 200 headings"),
    ("one heading twice", lambda: b"weld,weld\n", r":1:6: error: heading 'weld' is given twice; first in column 1"),
    ("a long field", lambda: HEAD + b'"' + b"x\n" * 40000 + b'",1,1,1\n', r":2:1: error: a field longer than 64 kB"),
    ("a long line", lambda: HEAD + b"x" * MIB, r":2:1: error: a line longer than 64 kB"),
    ("zeros", lambda: HEAD + b"fil\0let,5 mm,8 mm,240 mm\n", r":2:4: error: a control character"),
    ("Latin 1", lambda: HEAD + b"f\xe4,5 mm,8 mm,240 mm\n", r":2:2: error: a byte that is no UTF-8"),
    ("UTF-16", lambda: (HEAD + ROW).decode().encode("utf-16"), r": error: the file is UTF-16"),
    ("half a million bad rows", lambda: HEAD + filled(b"x,1,1,1\n", 4 * MIB), r":2:3: error: "),
    ("nothing", lambda: b"\n\n", r": error: the file is empty"),
]
JSON = [
    ("brackets", lambda: b"[" * (8 * MIB), r": error: "),
    ("brackets that close", lambda: b"[" * 4000000 + b"]" * 4000000, r": error: "),
    ("maps", lambda: b'{"stations":' * 400000, r": error: "),
    ("stations", lambda: b'{"stations":[' + filled(b"{},", 12 * MIB) + b"{}]}", r": error: "),
    ("numbers", lambda: b'{"stations":[' + filled(b"1,", 15 * MIB) + b"1]}", r": error: "),
    ("zeros", lambda: b"\0" * MIB, r": error: "),
    ("bad UTF-8", lambda: b'{"stations": [{"station": "\xff", "steps": [{}]}]}', r": error: "),
    ("nothing", lambda: b"", r": error: "),
]
