"""`plan` from the command line on small invented jobs: its JSON checked again, spoiled, followed, timed against somebody's
order; what must not be sent to the floor; interrupts; the same bytes twice; wrong usage. Called with the seambook executable and the
source root."""
import copy
import json
import re
import shutil
import signal
import subprocess
import sys
import tempfile
import time
import unittest
import zipfile
from pathlib import Path

SEAMBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
sys.path.insert(0, str(ROOT / "tests/bench"))
from shop_week import write_week  # noqa: E402
WHY = "basis: assumption, source: test"
STATION = (f'processes: [135], groups: ["1"], mounted: {{process: 135, filler: G3Si1-1.0, feed: solid 1.0, gas: M21, '
           f'cleanliness: carbon}}, {WHY}')
QUALIFIED = 'qualifications: [{process: 135, groups: ["1"], positions: [PA, PB]}]'
STATIONS = f"""format: 1
stations:
  - {{name: S1, {STATION}}}
  - {{name: S2, {STATION}}}
change_tasks:
  - {{name: papers, when: job, time: 10 min, {WHY}}}
  - {{name: fixture, when: weldment, time: 20 min, {WHY}}}
welders:
  - {{stamp: A, grade: welder, {QUALIFIED}}}
  - {{stamp: B, grade: welder, {QUALIFIED}}}
"""
CALENDAR = f"format: 1\nshifts:\n  - {{name: day, days: [Mon, Tue, Wed, Thu, Fri], start: 06:00, end: 14:00, {WHY}}}\n"
FILLET = "weld: fillet, leg: 4 mm, thickness: 6 mm, length: 900 mm, count: 9"


def job(name, joints, more="", of_weldment=""):
    return (f"format: 1\njob: {name}\nfinish: F1\nbase_metal: S235\n{more}weldments:\n  - name: w\n    parts: 2\n"
            f"    free_issue: true\n    free_issue_value: 1 EUR\n{of_weldment}    joints:\n" +
            "".join(f"      - {{id: {joint}}}\n" for joint in joints))


ONE = job("one", [f"J1, {FILLET}", f"J2, {FILLET}, after: [J1]"], "due: 2026-05-11 12:00\n")
TWO = job("two", [f"K1, {FILLET}", f"K2, {FILLET}"], "due: 2026-05-12\n")
LASER = 'weld: square, thickness: 1.5 mm, length: 800 mm, base_metal: "1.4301", procedure: SL-15A'
TUBE = 'weld: single_v, thickness: 2.6 mm, length: 152 mm, tube: 48.3 mm, base_metal: "1.4301", procedure: ST-PR'
PLATE = "weld: fillet, leg: 8 mm, length: 500 mm, position: PB, procedure: HM-Z8, passes: 1, base_metal: S355J2"
PLAIN = "weld: fillet, leg: 3 mm, thickness: 4 mm, length: 100 mm"
# Of each gate: folder of rates, what is taken out of its stations, date, joints, keys of the weldment.
GATES = {
    "laser": ("rates", "    safety_officer: true\n", "2026-05-11", [f"G1, {LASER}"], ""),
    "qualified": ("rates", "", "2026-05-15", [f"G1, {TUBE}, qualified: true"], ""),
    "preheat": ("jobs/marlgannet/rates", "", "2026-09-07", [f"G1, {PLATE}, thickness: [30 mm, 40 mm]"], ""),
    "vessel": ("rates", "", "2026-05-11", [f"G1, {PLAIN}"], "    vessel: used\n"),
    "confined": ("rates", "", "2026-05-11", [f"G1, {PLAIN}"], "    confined: true\n"),
}


class Planning(unittest.TestCase):
    def setUp(self):
        self.folder = Path(tempfile.mkdtemp())
        self.addCleanup(shutil.rmtree, self.folder)
        self.rates()
        for name, text in (("one", ONE), ("two", TWO)):
            (self.folder / f"{name}.yaml").write_text(text)

    def rates(self):
        shutil.copytree(ROOT / "rates", self.folder / "rates", ignore=shutil.ignore_patterns("with-*"))
        (self.folder / "rates/stations.yaml").write_text(STATIONS)
        (self.folder / "rates/calendar.yaml").write_text(CALENDAR)

    def plan(self, *words, code=0, jobs=("one.yaml", "two.yaml"), date="2026-05-11"):
        command = [SEAMBOOK, "plan", *jobs, "--rates", "rates", "--date", date, "--force", *words]
        done = subprocess.run(command, cwd=self.folder, capture_output=True, text=True, timeout=120, check=False)
        self.assertEqual(done.returncode, code, f"{words}\n{done.stdout}{done.stderr}")
        return done

    def printed(self, *words, **more):
        return json.loads(self.plan("--json", *words, **more).stdout)

    def write(self, name, document):
        (self.folder / name).write_text(document if isinstance(document, str) else json.dumps(document))
        return name


def steps_of(plan):
    return [dict(step, station=station["station"]) for station in plan["stations"] for step in station["steps"]]


class Verified(Planning):
    def test_a_plan_is_found_to_keep_every_rule_and_to_be_as_good(self):
        plan = self.printed()
        self.assertEqual(len(steps_of(plan)), 10)
        checked = self.printed("--verify", self.write("plan.json", plan))
        self.assertEqual(checked["verified"], True)
        this = plan["plans"][0]
        for key in ("cannot_be_done", "late_min", "change_min", "fixture_loads"):
            self.assertEqual(checked["levels"][key], this[key])
        self.assertIn("no rule is broken", self.plan("--verify", "plan.json").stdout)

    def spoiled(self, spoil, *lines):
        spoiled = copy.deepcopy(self.good)
        by_name = {step["operation"]: (station["steps"], step) for station in spoiled["stations"] for step in station["steps"]}
        spoil(spoiled, by_name)
        done = self.plan("--verify", self.write("spoiled.json", spoiled), code=1)
        for line in lines:
            self.assertIn(f"spoiled.json: {line}", done.stderr)

    def test_a_spoiled_plan_is_refused_with_what_it_breaks(self):
        self.good = self.printed()

        def leave_out(_, by_name):
            steps, step = by_name["two/w/K1/1"]
            steps.remove(step)

        def twice(_, by_name):
            steps, step = by_name["two/w/K1/1"]
            steps.append(step)

        def too_early(_, by_name):
            by_name["one/w/J2/fit"][1].update(set_up="2026-05-11T05:00:00", start="2026-05-11T05:00:00", finish="2026-05-11T05:53:00")

        def stranger(_, by_name):
            by_name["one/w/J2/fit"][1]["welder"] = "Z"

        def unknown(_, by_name):
            by_name["one/w/J2/fit"][1]["operation"] = "one/w/J7/fit"

        self.spoiled(leave_out, "two/w/K1/1 is not in the plan")
        self.spoiled(twice, "two/w/K1/1 stands in the plan twice")
        self.spoiled(too_early, "one/w/J2/fit has too little time for its work", "one/w/J2/fit begins before one/w/J1/1 is done and has rested")
        self.spoiled(stranger, "one/w/J2/fit cannot be done by Z at S")
        self.spoiled(unknown, "one/w/J7/fit is no work of these jobs that may be done", "one/w/J2/fit is not in the plan")

    def test_what_is_no_plan_is_refused(self):
        for text in ("", "[]", '{"stations": 3}', '{"stations": [{"station": "S1"}]}', '{"stations": [{"station": "S1", "steps": [{}]}]}'):
            self.assertIn("bad.json", self.plan("--verify", self.write("bad.json", text), code=1).stderr)


class Ordered(Planning):
    def order(self, names):
        return self.write("order.csv", "operation\n" + "".join(f"{name}\n" for name in names))

    def test_somebodys_order_is_timed_beside_the_plan(self):
        steps = sorted(steps_of(self.printed()), key=lambda step: step["start"])
        names = [step["operation"] for step in steps]
        plan = self.printed("--order", self.order(names))
        mine, = (other for other in plan["plans"] if "order.csv" in other["name"])
        self.assertEqual(mine["cannot_be_done"], 0)
        self.assertLessEqual(plan["plans"][0]["late_min"], mine["late_min"])
        names[0], names[-1] = names[-1], names[0]
        self.plan("--order", self.order(names), code=1)

    def test_an_order_that_is_none_is_refused(self):
        names = [step["operation"] for step in sorted(steps_of(self.printed()), key=lambda step: step["start"])]
        backwards = [name for name in names if "J2" in name] + [name for name in names if "J2" not in name]
        self.assertIn("one/w/J2/fit stands before one/w/J1/1, which it follows", self.plan("--order", self.order(backwards), code=1).stderr)
        self.assertIn("is not in the order", self.plan("--order", self.order(names[1:]), code=1).stderr)
        self.assertIn("stands in the order twice", self.plan("--order", self.order(names + names[:1]), code=1).stderr)
        self.assertIn("is no work of these jobs", self.plan("--order", self.order(names + ["x"]), code=1).stderr)
        self.assertIn("no column is called 'operation'", self.plan("--order", self.write("order.csv", "job\none\n"), code=1).stderr)


class Followed(Planning):
    def test_what_began_stays_and_nothing_moves_without_a_reason(self):
        before = self.printed()
        self.write("before.json", before)
        now = "2026-05-11T07:30"
        after = self.printed("--from", "before.json", "--now", now)
        began = {step["operation"] for step in steps_of(before) if step["set_up"] < now}
        self.assertTrue(began)
        self.assertEqual({step["operation"] for step in after["done"] + after["under_way"]}, began)
        self.assertEqual({step["operation"] for step in steps_of(after)}, {step["operation"] for step in steps_of(before)} - began)
        self.assertEqual(after["moved"], [])
        was = {step["operation"]: (step["station"], step["welder"]) for step in steps_of(before)}
        for step in steps_of(after) + after["under_way"]:
            self.assertEqual((step["station"], step["welder"]), was[step["operation"]])
        # The plan after the next still knows what the first one did.
        self.write("after.json", after)
        last = self.printed("--from", "after.json", "--now", "2026-05-11T09:00")
        self.assertLessEqual(began, {step["operation"] for step in last["done"]})
        self.assertFalse(began & {step["operation"] for step in steps_of(last)})
        self.assertEqual(self.printed("--verify", "after.json", "--now", now)["verified"], True)

    def test_work_outside_that_has_left_is_not_sent_again(self):
        outside = "    outside:\n      - {what: zinc, time: 30 h}\n"
        self.write("out.yaml", job("out", [f"J1, {FILLET}"], of_weldment=outside))
        before = self.printed(jobs=["out.yaml"])
        self.write("before.json", before)
        away, = before["away"]
        after = self.printed("--from", "before.json", "--now", "2026-05-11T13:00", jobs=["out.yaml"])
        self.assertEqual(after["away"], [])
        self.assertEqual(after["under_way"][0]["operation"], away["operation"])
        self.assertEqual(after["under_way"][0]["finish"][:13], away["finish"][:13])


class Floor(Planning):
    def gated(self, kind):
        folder, without, date, joints, of_weldment = GATES[kind]
        shutil.rmtree(self.folder / "rates")
        shutil.copytree(ROOT / folder, self.folder / "rates")
        stations = self.folder / "rates/stations.yaml"
        stations.write_text(stations.read_text().replace(without, "") if without else stations.read_text())
        self.write("gated.yaml", job("gated", joints, of_weldment=of_weldment))
        return self.printed("--seconds", "0.3", jobs=["gated.yaml"], date=date)

    def test_what_must_not_be_sent_to_the_floor_is_not(self):
        for kind in GATES:
            with self.subTest(kind):
                plan = self.gated(kind)
                kept = [entry for entry in plan["blocked"] if entry["kind"] == "not_for_the_floor"]
                self.assertTrue(any("gated/w".startswith(entry["what"]) or entry["what"] == "gated/w/G1" for entry in kept), plan["blocked"])
                self.assertTrue(all(entry["reason"] for entry in kept))
                self.assertFalse([step for step in steps_of(plan) if "/G1/" in step["operation"]])

    def test_a_lug_that_is_not_released_is_welded_and_the_lift_forbidden(self):
        self.write("lug.yaml", job("lug", [f"L1, {FILLET}, hold: before lift"], of_weldment="    lifted_on: [L1]\n"))
        plan = self.printed(jobs=["lug.yaml"])
        kept, = plan["blocked"]
        self.assertEqual((kept["what"], kept["kind"]), ("lug/w/L1", "not_for_the_floor"))
        self.assertTrue([step for step in steps_of(plan) if "/L1/" in step["operation"]])
        released = self.write("day.yaml", "format: 1\nreleased: [{joint: lug/w/L1, by: Q9}]\n")
        self.assertEqual(self.printed("--day", released, jobs=["lug.yaml"])["blocked"], [])


class Interrupted(unittest.TestCase):
    def searching(self, folder):
        """A plan that is being searched, by the kernel's word that interrupts are caught: only while it searches are they."""
        words = [SEAMBOOK, "plan", *write_week(folder), "--rates", "rates", "--date", "2026-05-11", "--seconds", "300", "--json"]
        running = subprocess.Popen(words, cwd=folder, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)
        self.addCleanup(running.kill)
        status = Path(f"/proc/{running.pid}/status")
        caught = 0
        while running.poll() is None and not caught & 1 << signal.SIGINT - 1:
            caught = int(re.search(r"SigCgt:\s*(\w+)", status.read_text()).group(1), 16)
            time.sleep(0.01)
        return running

    @unittest.skipUnless(Path("/proc/self/status").exists(), "needs /proc")
    def test_an_interrupted_search_gives_its_best_plan_and_a_second_interrupt_ends_it(self):
        with tempfile.TemporaryDirectory() as name:
            folder = Path(name)
            running = self.searching(folder)
            time.sleep(0.5)
            running.send_signal(signal.SIGINT)
            printed, said = running.communicate(timeout=100)
            self.assertEqual(running.returncode, 0, said)
            self.assertIn("warning: the search was interrupted", said)
            self.assertGreater(len(steps_of(json.loads(printed))), 300)
            workbook = folder / "out/plan-2026-05-11.xlsx"
            self.assertIsNone(zipfile.ZipFile(workbook).testzip())
            workbook.unlink()
            running = self.searching(folder)
            while running.poll() is None:
                running.send_signal(signal.SIGINT)
            running.communicate()
            self.assertEqual(running.returncode, -signal.SIGINT)
            self.assertEqual(list((folder / "out").iterdir()), [])


class Bytes(Planning):
    def test_the_same_files_give_the_same_bytes(self):
        first, second = (self.plan("--json", "--out", out).stdout.replace(out, "out") for out in ("out-1", "out-2"))
        self.assertEqual(first, second)
        book = "plan-2026-05-11.xlsx"
        self.assertEqual((self.folder / "out-1" / book).read_bytes(), (self.folder / "out-2" / book).read_bytes())

    def test_wrong_usage_and_missing_files_write_nothing(self):
        for words in (["--now", "noon"], ["--now", "2026-05-11T25:00"], ["--seconds", "0"], ["--seconds", "soon"], ["--date", "tomorrow"]):
            self.assertTrue(self.plan(*words, code=2).stderr.startswith("seambook: "), words)
        for option in ("--day", "--from", "--verify", "--order"):
            self.assertIn("none.x", self.plan(option, "none.x", code=3).stderr)
        self.assertIn("there is no operation", self.plan("--day", self.write(
            "day.yaml", "format: 1\nblocked: [{operation: one/w/J9/1, why: rain}]\n"), code=1).stderr)
        self.assertFalse((self.folder / "out").exists())


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
