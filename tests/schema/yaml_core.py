"""YAML as an editor's language server takes it: the core schema of YAML 1.2, in which 06:30 and 2026-05-18 are text."""
import re

import yaml


class CoreLoader(yaml.SafeLoader):
    pass


CoreLoader.yaml_implicit_resolvers = {}
for tag, pattern, first in (
        ("bool", r"true|True|TRUE|false|False|FALSE", "tTfF"),
        ("int", r"[-+]?[0-9]+|0o[0-7]+|0x[0-9a-fA-F]+", "-+0123456789"),
        ("float", r"[-+]?(?:\.[0-9]+|[0-9]+(?:\.[0-9]*)?)(?:[eE][-+]?[0-9]+)?", "-+.0123456789"),
        ("null", r"~|null|Null|NULL|", ["~", "n", "N", ""])):
    CoreLoader.add_implicit_resolver(f"tag:yaml.org,2002:{tag}", re.compile(f"^(?:{pattern})$"), list(first))


def core_int(loader, node):
    text = node.value
    return int(text, 0) if text[:2] in ("0o", "0x") else int(text)


CoreLoader.add_constructor("tag:yaml.org,2002:int", core_int)


def load(text):
    return yaml.load(text, CoreLoader)
