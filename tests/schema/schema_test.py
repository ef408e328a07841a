#!/usr/bin/env python3
"""The schemas that the program prints, by an independent validator: those in the repository are current, every example
in them and every example file is valid, every refused file that a schema can catch is invalid, and the documents that
--json prints hold the keys that their schemas name, no more and no less.
usage: schema_test.py SEAMBOOK ROOT [--files]: without the documents"""
import json
import pathlib
import subprocess
import sys
import tempfile

import jsonschema
import yaml

import yaml_core

FILES = {"job": "jobs/job.schema.json", "day": "jobs/day.schema.json", "rates": "rates/rates.schema.json"}
REFERENCES = {"job": "jobs/KEYS.md", "day": "jobs/KEYS-day.md", "rates": "rates/KEYS.md"}
# Of refused files, by folder: what they are.
REFUSED = {"read": "job", "resolve": "job", "findings": "job", "text": "job", "rates": "rates", "shop": "rates",
           "day": "day"}

program, root = sys.argv[1], pathlib.Path(sys.argv[2])
faults = []
checked = {}


def fault(what):
    faults.append(what)
    print("FAULT:", what)


def count(what):
    checked[what] = checked.get(what, 0) + 1


def run(*words, codes=(0,)):
    done = subprocess.run([program, *map(str, words)], capture_output=True, text=True, cwd=root)
    if done.returncode not in codes:
        fault(f"{' '.join(map(str, words))}: exit code {done.returncode}: {done.stderr[-400:]}")
    return done.stdout


def validator(topic):
    schema = json.loads(run("schema", topic))
    jsonschema.Draft7Validator.check_schema(schema)
    return jsonschema.Draft7Validator(schema)


def first_error(check, value):
    error = jsonschema.exceptions.best_match(check.iter_errors(value))
    return error and f"{'/'.join(map(str, error.absolute_path))}: {error.message[:160]}"


def examples_in(schema, definitions):
    """Every schema below this one that has examples, and with each the schema itself."""
    if isinstance(schema, dict):
        for example in schema.get("examples", []) if isinstance(schema.get("examples"), list) else []:
            yield example, {**schema, "definitions": definitions}
        for part in schema.values():
            yield from examples_in(part, definitions)
    elif isinstance(schema, list):
        for part in schema:
            yield from examples_in(part, definitions)


def check_files():
    for topic, path in FILES.items():
        text = run("schema", topic)
        if (root / path).read_text() != text:
            fault(f"{path} is not current: seambook schema {topic} > {path}")
        if (root / REFERENCES[topic]).read_text() != run("schema", topic, "--reference"):
            fault(f"{REFERENCES[topic]} is not current: seambook schema {topic} --reference > {REFERENCES[topic]}")
        schema = json.loads(text)
        for example, of in examples_in(schema, schema["definitions"]):
            count("examples in schemas")
            if error := first_error(jsonschema.Draft7Validator(of), example):
                fault(f"{topic}: example {example!r} of '{of['description']}': {error}")


def example_files():
    for path in sorted(root.glob("jobs/*.yaml")) + sorted(root.glob("jobs/*/*.yaml")):
        yield "job", path
    for path in sorted(root.glob("rates/*.yaml")) + sorted(root.glob("jobs/*/rates/*.yaml")):
        yield "rates", path


def check_examples(validators):
    for topic, path in example_files():
        count(f"example files, {topic}")
        text = path.read_text()
        named = [line.split("$schema=")[1].strip() for line in text.splitlines() if "yaml-language-server" in line]
        if [(path.parent / name).resolve() for name in named] != [(root / FILES[topic]).resolve()]:
            fault(f"{path}: its modeline names {named}, not {FILES[topic]}")
        if error := first_error(validators[topic], yaml_core.load(text)):
            fault(f"{path}: {error}")


def beyond_schema():
    """Refused files that a schema cannot catch: path, then why."""
    lines = (root / "tests/schema/beyond_schema.txt").read_text().splitlines()
    return dict(line.split(": ", 1) for line in lines if line and not line.startswith("#"))


def check_refused(validators):
    beyond = beyond_schema()
    for folder, topic in REFUSED.items():
        for path in sorted((root / "tests/refused" / folder).glob("*.yaml")):
            name = f"{folder}/{path.name}"
            try:
                error = first_error(validators[topic], yaml_core.load(path.read_bytes()))
                why = "a schema finds: " + error if error else ""
            except (yaml.YAMLError, ValueError) as no_yaml:
                why = "no YAML: " + str(no_yaml).splitlines()[0]
            count("refused files caught by a schema" if why.startswith("a schema") else
                  "refused files that are no YAML" if why else "refused files beyond a schema")
            if not why and name not in beyond:
                fault(f"{name} is refused, and the schema of {topic} finds nothing")
            if why and name in beyond:
                fault(f"{name} is listed as beyond a schema, but {why}")
            beyond.pop(name, None)
    for name in beyond:
        fault(f"beyond_schema.txt names {name}, which is not there")


def check_documents():
    checks = {}

    def holds(topic, words, codes=(0,)):
        text = run(*words, codes=codes)
        if topic not in checks:
            checks[topic] = validator(topic)
        count(f"documents of {topic}")
        try:
            if error := first_error(checks[topic], json.loads(text)):
                fault(f"{' '.join(map(str, words))}: {error}")
        except ValueError as wrong:
            fault(f"{' '.join(map(str, words))}: no JSON: {wrong}")
        return text

    with tempfile.TemporaryDirectory() as scratch:
        scratch = pathlib.Path(scratch)
        out = ["--out", scratch, "--force", "--date", "2026-05-11", "--json", "--quiet"]
        for folder in ("jobs", "jobs/saltbriar", "jobs/marlgannet"):
            holds("estimate", ["estimate", *sorted(root.glob(folder + "/*.yaml")), "--json", "--quiet"])
        # One small job of each shop: what is long to work out says nothing new of the keys.
        small = [root / name for name in ("jobs/bracket.yaml", "jobs/saltbriar/hinge-set.yaml",
                                          "jobs/marlgannet/bracket-repair.yaml")]
        holds("check", ["check", *small, "--json", "--quiet"])
        holds("compare", ["compare", root / "jobs/wash-down-cabinet.yaml", root / "jobs/pipe-set.yaml", *out])
        holds("explain", ["explain", small[1], "--json", "--quiet"])
        holds("explain", ["explain", root / "jobs/marlgannet/coolant-tank.yaml", "--json", "--quiet"])  # with an option
        holds("explain", ["explain", small[0], "bracket/1", "--json", "--quiet"])
        holds("explain", ["explain", small[0], "nothing", "--json", "--quiet"], codes=(2,))
        plan, quote = scratch / "plan.json", scratch / "quote.json"
        plan.write_text(holds("plan", ["plan", small[0], *out]))
        holds("plan", ["plan", small[0], *out, "--from", plan, "--now", "2026-05-12T09:00"])
        holds("plan", ["plan", small[2], *out])  # late, blocked, with work outside
        holds("plan", ["plan", small[0], "--verify", plan, "--date", "2026-05-11", "--json", "--quiet"])
        for job in small[1:]:
            quote.write_text(holds("quote", ["quote", job, *out]))
        holds("quote", ["quote", small[2], *out, "--against", quote])
        holds("quote", ["quote", small[0], *out, "--customer-only"])
        holds("rates_check", ["rates", "check", "rates", small[0], "--json", "--quiet", "--date", "2027-05-11"])
        refused = root / "tests/refused/read/twenty_faults.yaml"
        holds("check", ["check", refused, "--json"], codes=(1,))
        holds("plan", ["plan", refused, *out], codes=(1,))
    # A schema that let everything through would hold for every document.
    spoiled = json.loads(run("check", root / "jobs/bracket.yaml", "--json", "--quiet"))
    for change in ({"more": 1}, {"format": "1"}, {"jobs": {}}):
        if not first_error(checks["check"], {**spoiled, **change}):
            fault(f"the schema of check lets {change} through")


validators = {topic: validator(topic) for topic in FILES}
check_files()
check_examples(validators)
check_refused(validators)
if "--files" not in sys.argv:
    check_documents()
for what, number in checked.items():
    print(f"{number} {what}")
print(f"{len(faults)} faults")
sys.exit(1 if faults or len(checked) < (6 if "--files" in sys.argv else 11) else 0)
