"""`completion bash|zsh`, tried in the shells themselves on a pseudo-terminal: what stands on the line after the tabulator key.
Called with the seambook executable. A shell that is not there is left out, and said."""
import os
import pty
import re
import select
import shutil
import subprocess
import sys
import tempfile
import time
import unittest
from pathlib import Path

SEAMBOOK = Path(sys.argv[1]).resolve()
FILES = ["first-job.yaml", "first.txt", "two words.yaml", "tuesday.csv", "monday.json", "shop/second.yaml", "rates/shop.yaml",
         "plan/third.yaml"]
# What is typed before the key, and what stands there behind it.
CASES = {
    "seambook qu": "seambook quote",
    "seambook pla": "seambook plan",  # not the folder of that name
    "seambook --ver": "seambook --version",
    "seambook quote --cust": "seambook quote --customer-only",
    "seambook explain first-job.yaml --js": "seambook explain first-job.yaml --json",
    "seambook check fir": "seambook check first-job.yaml",
    "seambook check tw": "seambook check two\\ words.yaml",
    "seambook estimate --jobs 2 fir": "seambook estimate --jobs 2 first-job.yaml",
    "seambook quote --rates ra": "seambook quote --rates rates",
    "seambook check shop/s": "seambook check shop/second.yaml",
    "seambook plan --day tue": "seambook plan --day tuesday.csv",
    "seambook plan first-job.yaml --from mon": "seambook plan first-job.yaml --from monday.json",
    "seambook new --units u": "seambook new --units us",
    "seambook schema expl": "seambook schema explain",
    "seambook rates ch": "seambook rates check",
    "seambook rates check ra": "seambook rates check rates",
    "seambook rates check rates fir": "seambook rates check rates first-job.yaml",
    "seambook completion z": "seambook completion zsh",
    "seambook manual comp": "seambook manual comp",  # compare or completion
    "seambook manual compl": "seambook manual completion",
    "seambook quote --color al": "seambook quote --color always",
}


class Shell:
    """An interactive shell in `folder` that knows the completion."""

    def __init__(self, command, folder, setup):
        self.child, self.terminal = pty.fork()
        if self.child == 0:
            os.chdir(folder)
            path = f"{SEAMBOOK.parent}:{os.environ['PATH']}"
            os.execvpe(command[0], command, {**os.environ, "PATH": path, "HOME": str(folder), "TERM": "xterm", "PS1": "", "ZDOTDIR": str(folder)})
        self.asked = 0
        self.send(setup + "\n")
        self.line_of("")

    def send(self, keys):
        os.write(self.terminal, keys.encode())

    def read_until(self, wanted, seconds=30):
        out, end = "", time.monotonic() + seconds
        while not re.search(wanted, out):
            if time.monotonic() > end or not select.select([self.terminal], [], [], max(0, end - time.monotonic()))[0]:
                raise AssertionError(f"no {wanted} in {out!r}")
            out += os.read(self.terminal, 65536).decode(errors="replace")
        return re.search(wanted, out)

    def line_of(self, typed):
        """The line that `typed` and the key make: the shell prints it as it would read it back."""
        self.asked += 1
        if typed:
            self.send(typed + "\t")
            time.sleep(0.3)  # what follows would be taken for more of the word
        mark = f"line{self.asked}"
        self.send("\x01: \x05\n" if not typed else "\x01: '\x05'\n")
        self.send(f"echo {mark[:2]}''{mark[2:]} \"[$(fc -ln -1 -1)]\"\n")
        # zsh takes the stroke behind a folder away again when something else follows.
        return self.read_until(mark + r" \[\s*:? ?'?([^\r\n]*?)'?\s*\]").group(1).strip().rstrip("/")

    def end(self):
        os.close(self.terminal)
        os.waitpid(self.child, 0)


class Completion(unittest.TestCase):
    maxDiff = None

    def setUp(self):
        self.folder = Path(tempfile.mkdtemp())
        for name in FILES:
            (self.folder / name).parent.mkdir(exist_ok=True)
            (self.folder / name).write_text("")

    def tearDown(self):
        shutil.rmtree(self.folder)

    def try_in(self, command, setup):
        if not shutil.which(command[0]):
            self.skipTest(f"{command[0]} is not there")
        shell = Shell(command, self.folder, setup)
        try:
            self.assertEqual({typed: shell.line_of(typed) for typed in CASES}, CASES)
        finally:
            shell.end()

    def test_bash(self):
        self.try_in(["bash", "--norc", "--noprofile", "-i"],
                    "bind 'set enable-bracketed-paste off'; set -o history; source <(seambook completion bash)")

    def test_zsh(self):
        self.try_in(["zsh", "-f", "-i"], "unset zle_bracketed_paste; setopt interactivecomments; HISTSIZE=100; autoload -Uz compinit; "
                    "compinit -u -D; source <(seambook completion zsh)")

    def test_the_scripts_are_whole_for_their_shells(self):
        for shell in ("bash", "zsh"):
            with self.subTest(shell):
                script = subprocess.run([SEAMBOOK, "completion", shell], capture_output=True, text=True, check=True).stdout
                if shutil.which(shell):
                    told = subprocess.run([shell, "-n"], input=script, capture_output=True, text=True, check=False)
                    self.assertEqual((told.returncode, told.stderr), (0, ""))
                self.assertNotIn("UINT", script)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
