"""The include check on a small tree: silent when all is right, and each planted fault named at its line."""

import subprocess
import sys
import tempfile
from pathlib import Path

CHECK = Path(__file__).with_name("include_direction.py")

SOUND = {
    "src/basics/units.hpp": "#include <cstdint>\n",
    "src/text/tree.hpp": '#include <string>\n\n#include "basics/units.hpp"\n',
    "src/text/tree.cpp": '#include "text/tree.hpp"\n#include <yaml-cpp/parser.h>\n#include <fmt/format.h>\n',
    "src/report/xlsx_file.cpp": "#include <xlsxwriter.h>\n#include <unistd.h>\n",
    "src/main.cpp": '#include <spdlog/spdlog.h>\n#include "text/tree.hpp"\n',
    "tests/main.cpp": "#include <doctest/doctest.h>\n",
}
PLANTED = [  # file, what it holds, line of the fault, words of the complaint
    ("src/basics/early.cpp", '#include <vector>\n#include "text/tree.hpp"\n', 2, "basics stands before text"),
    ("src/read/late.cpp", "\n\n#include <yaml-cpp/parser.h>\n", 3, "may not be included here"),
    ("src/basics/ring.cpp", "#include <boost/graph/topological_sort.hpp>\n", 1, "may not be included here"),
    ("src/report/page.cpp", "#include <xlsxwriter/workbook.h>\n", 1, "may not be included here"),
    ("src/quote/log.cpp", "#include <spdlog/spdlog.h>\n", 1, "may not be included here"),
    ("src/quote/json.cpp", "#include <nlohmann/json.hpp>\n", 1, "may not be included here"),
    ("src/read/options.cpp", "#include <CLI/CLI.hpp>\n", 1, "may not be included here"),
    ("src/text/words.hpp", "#include <fmt/format.h>\n", 1, "a header includes only"),
    ("src/text/near.cpp", '#include "tree.hpp"\n', 1, 'not written as "folder/file"'),
    ("src/text/gone.cpp", '#include "text/gone.hpp"\n', 1, "is not there"),
    ("src/text/other.cpp", "#include <curl/curl.h>\n", 1, "belongs to no library"),
    ("src/stuff/a.cpp", "int a;\n", 1, "not in the flow"),
    ("tests/text/long_test.cpp", "\n" * 301, 301, "300 at most"),
]


def run(files: dict[str, str]) -> tuple[int, str]:
    with tempfile.TemporaryDirectory() as root:
        for name, text in files.items():
            file = Path(root, name)
            file.parent.mkdir(parents=True, exist_ok=True)
            file.write_text(text, encoding="utf-8")
        result = subprocess.run([sys.executable, CHECK, root], capture_output=True, text=True, check=False)
        return result.returncode, result.stdout


status, output = run(SOUND)
assert status == 0, output
for name, text, line, words in PLANTED:
    status, output = run({**SOUND, name: text})
    complaints = output.splitlines()
    assert status == 1 and len(complaints) == 1, (name, status, output)
    assert f"{name}:{line}: " in complaints[0] and words in complaints[0], (name, output)
assert run({})[0] == 1, "an empty tree is no success"
print(f"{len(PLANTED)} planted faults found")
