"""Invented jobs of any size, with seams that the example rate book's procedures cover."""
import random

# Base metal, procedure, leg, thickness: carbon steel first, then stainless.
SEAMS = (("S235", "CG-F3", 3, 4), ("S235", "CG-F4", 4, 6), ("S235", "CG-F5", 5, 8), ("S235", "CG-F6", 6, 10),
         ("1.4301", "SG-F3", 3, 4), ("1.4301", "SG-F4", 4, 6), ("1.4301", "ST-F2", 2, 2), ("1.4301", "ST-F4", 4, 5))
PER_WELDMENT = 500


def joint_lines(number, draw):
    metal, procedure, leg, thickness = draw.choice(SEAMS)
    return [f"      - id: J{number:05}", "        weld: fillet", f"        leg: {leg} mm", f"        thickness: {thickness} mm",
            f'        base_metal: "{metal}"', f"        length: {draw.randint(10, 90) * 10} mm", f"        count: {draw.randint(1, 4)}",
            "        position: PB", f"        procedure: {procedure}", "        passes: 1",
            f"        note: drawing {4700 + number % 50} sheet {draw.randint(1, 7)}"]


def job_text(name, joints, seed):
    """A job in block style, its joints in weldments of up to 500."""
    draw = random.Random(seed)
    lines = ["format: 1", f"job: {name}", "finish: F1", "qualified: true", "weldments:"]
    for number in range(1, joints + 1):
        if number % PER_WELDMENT == 1:
            lines += [f"  - name: frame-{number // PER_WELDMENT + 1}", "    parts: 4", "    free_issue: true", "    joints:"]
        lines += joint_lines(number, draw)
    return "\n".join(lines) + "\n"
