"""Signals, full disks, denied rights, vanished folders and second runs while a quote is written: the old file stays or the new one
is there whole, nothing else stays, and the exit code tells. Called with the seambook executable and the source root; a third
argument `long` takes 200 moments of signals and 50 sizes of disk, other numbers seed the moments."""
import os
import random
import re
import resource
import shutil
import signal
import subprocess
import sys
import tempfile
import time
import unittest
from pathlib import Path

SEAMBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
LONG = "long" in sys.argv[3:]
SEED = next((int(word) for word in sys.argv[3:] if word.isdigit()), 7)
MOMENTS, SIZES = (200, 50) if LONG else (16, 8)
TEMPORARY = re.compile(r"\.seambook-\d+-\d+")
NOBODY = 65534
JOB = """format: 1
job: frame
weldments:
  - {name: frame, parts: 2, mass: 8 kg, base_metal: S235, process: 135, bought: 9 EUR each, joints: [
      {weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm}]}
"""


class Faults(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.kept = tempfile.TemporaryDirectory()
        cls.folder = Path(cls.kept.name)
        cls.folder.chmod(0o755)
        (cls.folder / "frame.yaml").write_text(JOB)
        cls.out = cls.folder / "out"
        cls.old, cls.new = cls.made("2026-05-11"), cls.made("2026-05-12")
        began = time.monotonic()
        cls.made("2026-05-12")
        cls.lasts = time.monotonic() - began
        assert cls.old != cls.new and len(cls.new) > 5000

    @classmethod
    def tearDownClass(cls):
        cls.kept.cleanup()

    @classmethod
    def start(cls, date="2026-05-12", *words, out=None, job="frame.yaml", **more):
        command = [SEAMBOOK, "quote", job, "--rates", ROOT / "rates", "--date", date, "--out", out or cls.out, *words]
        return subprocess.Popen(command, cwd=cls.folder, stdin=subprocess.DEVNULL, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True,
                                **more)

    @classmethod
    def run_to_end(cls, *words, **more):
        program = cls.start(*words, **more)
        said = program.communicate(timeout=120)[0]
        return program.returncode, said

    @classmethod
    def made(cls, date):
        code, said = cls.run_to_end(date, "--force")
        assert code == 0, said
        return (cls.out / "frame-quote.xlsx").read_bytes()

    def setUp(self):
        self.random = random.Random(SEED)
        shutil.rmtree(self.out, ignore_errors=True)
        self.out.mkdir()
        self.target = self.out / "frame-quote.xlsx"
        self.target.write_bytes(self.old)

    def left_over(self):
        return [path.name for path in self.out.iterdir() if path.name != self.target.name]

    def wait_for_temporary(self, program):
        while program.poll() is None:
            if self.left_over():
                return True
        return False

    def signalled(self, number):
        """Half the signals at any moment of the run, half while the temporary is there. Gives the exit code."""
        self.target.write_bytes(self.old)
        program = self.start("2026-05-12", "--force")
        if self.random.random() < 0.5:
            time.sleep(self.random.random() * self.lasts)
        elif self.wait_for_temporary(program):
            time.sleep(self.random.random() * self.lasts * 0.1)
        program.send_signal(number)
        said = program.communicate(timeout=120)[0]
        self.assertIn(program.returncode, (0, -number), said)
        self.assertIn(self.target.read_bytes(), (self.old, self.new), "half a file")
        if program.returncode == 0:
            self.assertEqual(self.target.read_bytes(), self.new)
        return program.returncode

    def test_signals_leave_nothing_behind(self):
        ended = 0
        for _ in range(MOMENTS):
            number = self.random.choice([signal.SIGINT, signal.SIGTERM, signal.SIGHUP])
            ended += self.signalled(number) != 0
            self.assertEqual(self.left_over(), [], number)
        self.assertGreater(ended, MOMENTS // 8)

    def test_what_a_killed_run_leaves_is_swept(self):
        left = 0
        for _ in range(MOMENTS):
            self.signalled(signal.SIGKILL)
            names = self.left_over()
            self.assertLessEqual(len(names), 1, names)
            self.assertTrue(all(TEMPORARY.fullmatch(name) for name in names), names)
            left += len(names)
            if self.random.random() < 0.2:
                self.assertEqual(self.run_to_end("2026-05-12", "--force")[0], 0)
                self.assertEqual(self.left_over(), [])
        self.assertGreater(left, 0)
        self.assertEqual(self.run_to_end("2026-05-12", "--force")[0], 0)
        self.assertEqual(self.left_over(), [])

    def refused_or_new(self, result, words):
        code, said = result
        self.assertEqual(self.left_over() if self.out.exists() else [], [])
        if code == 0:
            self.assertEqual(self.target.read_bytes(), self.new)
            return False
        self.assertEqual(code, 3, said)
        self.assertRegex(said, words)
        self.assertEqual(self.target.read_bytes(), self.old)
        return True

    def small_disk(self):
        mounted = self.folder / "disk"
        mounted.mkdir(exist_ok=True)
        mount = subprocess.run(["mount", "-t", "tmpfs", "-o", "size=4m", "tmpfs", mounted], capture_output=True, check=False)
        if mount.returncode != 0:
            self.skipTest("no right to mount a small disk")
        self.addCleanup(lambda: subprocess.run(["umount", mounted], check=True))
        return mounted

    def leave_free(self, mounted, room):
        (mounted / "ballast").unlink(missing_ok=True)
        disk = os.statvfs(mounted)
        (mounted / "ballast").write_bytes(b"x" * (disk.f_bavail * disk.f_bsize - int(room)))

    def test_a_full_disk(self):
        mounted = self.small_disk()
        self.out, self.target = mounted / "out", mounted / "out/frame-quote.xlsx"
        refused = 0
        for at in range(SIZES):
            shutil.rmtree(self.out, ignore_errors=True)
            self.out.mkdir()
            self.target.write_bytes(self.old)
            self.leave_free(mounted, at * 1.5 * len(self.new) / SIZES)
            refused += self.refused_or_new(self.run_to_end("2026-05-12", "--force", out=self.out), "No space left|not be written|exceeds")
        self.assertTrue(0 < refused < SIZES)

    def test_a_full_disk_under_the_parts(self):
        # A workbook's parts stand unpacked in the system's folder for temporary files before they are packed.
        mounted = self.small_disk()
        refused = 0
        for at in range(SIZES):
            self.leave_free(mounted, at * 24 * len(self.new) / SIZES)
            environment = os.environ | {"TMPDIR": str(mounted)}
            refused += self.refused_or_new(self.run_to_end("2026-05-12", "--force", env=environment), "No space left")
            self.assertEqual([path.name for path in mounted.iterdir()], ["ballast"])
        self.assertTrue(0 < refused < SIZES)

    def test_a_limit_on_the_size_of_files(self):
        refused = 0
        for at in range(SIZES):
            most = int(at * 8 * len(self.new) / SIZES)  # sheets are larger before they are packed

            def limit(most=most):
                signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
                resource.setrlimit(resource.RLIMIT_FSIZE, (most, most))

            self.target.write_bytes(self.old)
            refused += self.refused_or_new(self.run_to_end("2026-05-12", "--force", preexec_fn=limit, restore_signals=False), "File too large|written|I/O")
        self.assertGreater(refused, 0)

    def test_a_folder_that_may_not_be_written(self):
        self.out.chmod(0o555)
        self.addCleanup(self.out.chmod, 0o755)
        other = {"user": NOBODY, "group": NOBODY, "extra_groups": []} if os.geteuid() == 0 else {}
        code, said = self.run_to_end("2026-05-12", "--force", **other)
        self.assertEqual(code, 3, said)
        self.assertIn("Permission denied", said)
        self.assertEqual(self.target.read_bytes(), self.old)
        self.assertEqual(self.left_over(), [])

    def test_a_folder_that_vanishes(self):
        refused = 0
        for _ in range(MOMENTS // 2):
            self.out.mkdir(exist_ok=True)
            program = self.start("2026-05-12", "--force")
            self.wait_for_temporary(program)
            gone = self.folder / "gone"
            self.out.rename(gone)
            said = program.communicate(timeout=120)[0]
            self.assertIn(program.returncode, (0, 3), said)
            refused += program.returncode == 3
            made = gone / self.target.name
            if program.returncode == 0 and not self.target.exists():
                self.assertEqual(made.read_bytes(), self.new)
            elif made.exists():
                self.assertIn(made.read_bytes(), (self.old, self.new))
            shutil.rmtree(gone)
            shutil.rmtree(self.out, ignore_errors=True)
        self.assertGreater(refused, 0)

    def test_two_runs_on_one_target(self):
        for _ in range(MOMENTS // 4):
            runs = [self.start(date, "--force") for date in ("2026-05-11", "2026-05-12")]
            said = [run.communicate(timeout=120)[0] for run in runs]
            self.assertEqual([run.returncode for run in runs], [0, 0], said)
            self.assertIn(self.target.read_bytes(), (self.old, self.new))
            self.assertEqual(self.left_over(), [])
            self.target.unlink()
            runs = [self.start(date) for date in ("2026-05-11", "2026-05-12")]
            said = [run.communicate(timeout=120)[0] for run in runs]
            self.assertEqual(sorted(run.returncode for run in runs), [0, 1], said)
            self.assertEqual(self.target.read_bytes(), self.old if runs[0].returncode == 0 else self.new)
            self.assertEqual(self.left_over(), [])

    def test_a_link_is_replaced_and_not_followed(self):
        precious = self.folder / "precious"
        precious.write_text("precious")
        self.target.unlink()
        self.target.symlink_to(precious)
        self.assertEqual(self.run_to_end()[0], 1)
        self.assertTrue(self.target.is_symlink())
        self.assertEqual(self.run_to_end("2026-05-12", "--force")[0], 0)
        self.assertFalse(self.target.is_symlink())
        self.assertEqual(self.target.read_bytes(), self.new)
        self.assertEqual(precious.read_text(), "precious")

    def test_names_of_jobs_as_names_of_files(self):
        names = {"../../etc/passwd": "etc-passwd", "/abs": "abs", "..": "job", ".hidden": "hidden", "-rf": "rf", "a\\\\b:c*d?": "a-b-c-d",
                 "x" * 300: "x" * 100, "a b\u00a0c": "a-b-c", "~$lock": "lock", "$(id)`id`;|&": "id-id", "Träger 高": "Träger-高"}
        for name, wanted in names.items():
            shutil.rmtree(self.out)
            before = {path.name for path in self.folder.iterdir()}
            (self.folder / "named.yaml").write_text(JOB.replace("job: frame", f'job: "{name}"'))
            code, said = self.run_to_end(job="named.yaml")
            self.assertEqual(code, 0, said)
            self.assertEqual([path.name for path in self.out.iterdir()], [f"{wanted}-quote.xlsx"])
            self.assertLessEqual({path.name for path in self.folder.iterdir()} - before, {"named.yaml", "out"})

    def test_results_that_cannot_be_printed(self):
        with open("/dev/full", "wb") as full:
            done = subprocess.run([SEAMBOOK, "estimate", "frame.yaml", "--rates", ROOT / "rates"], cwd=self.folder, stdout=full,
                                  stderr=subprocess.PIPE, check=False)
        self.assertEqual(done.returncode, 3)
        self.assertIn(b"No space left", done.stderr)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
