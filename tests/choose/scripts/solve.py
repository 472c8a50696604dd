"""Best sets of larger harps, from an integer-programming solver.

Nothing of Stringloft takes part but the pulls and stiffnesses of each item on each string, which are checked
elsewhere. The sum and the rules are written here once more, as the documentation of `engine::choose` tells them: each
pair of items on two neighbouring strings is a binary variable with a constant cost, the pairs make one path, and the
limits of the total pull, of the changes and of the items are one row each. HiGHS solves it, through SciPy's `milp`.
Needs Python 3 with SciPy. First

    cargo test --test published write_the_cases -- --ignored

then, with the file that it names, this writes `tests/choose/solved.json`:

    python tests/choose/scripts/solve.py FILE
"""

import importlib.metadata
import json
import math
import pathlib
import sys

import numpy
from scipy.optimize import Bounds, LinearConstraint, milp
from scipy.sparse import coo_matrix


def own(case, row, choice):
    off = math.log(choice["pull_n"] / row["wanted"][0]) if row["wanted"] else 0.0
    return row["weight"] * off * off + case["weights"]["price"] * choice["units"]


def pair(case, upper, one, lower, other):
    """Cost of two neighbours, whether they count as a change and as another item; None where a rule forbids them."""
    weights, rules = case["weights"], case["rules"]
    families = (one["family"], other["family"])
    listed = None not in families
    change = listed and families[0] != families[1]
    ruled = listed and not (upper["kept"] and lower["kept"])
    if ruled and rules["in_order"] and families[0] > families[1]:
        return None
    gauges = (one["gauge_nm"], other["gauge_nm"])
    if ruled and rules["no_shrinking"] and not change and None not in gauges and gauges[0] > gauges[1]:
        return None
    cores = (one["core_nm"], other["core_nm"])
    if ruled and rules["no_shrinking"] and not change and None not in cores and cores[0] > cores[1]:
        return None
    feel = math.log(other["stiffness"] / one["stiffness"])
    tension = math.log(other["pull_n"] / one["pull_n"])
    if upper["wanted"] and lower["wanted"]:
        feel -= math.log(lower["wanted"][1] / upper["wanted"][1])
        tension -= math.log(lower["wanted"][0] / upper["wanted"][0])
    item = one["item"] != other["item"]
    cost = (weights["feel"] + (weights["at_change"] if change else 0.0)) * feel**2
    cost += weights["tension"] * tension**2
    cost += (weights["change"] if change else 0.0) + (weights["item"] if item else 0.0)
    return cost, change and ruled, item


def solve(case):
    rows = case["rows"]
    costs, pulls, changes, items, ends = [], [], [], [], []
    node = {}
    for at, row in enumerate(rows):
        for number in range(len(row["options"])):
            node[at, number] = len(node)
    for number, choice in enumerate(rows[0]["options"]):
        costs.append(own(case, rows[0], choice))
        pulls.append(choice["pull_n"])
        changes.append(0)
        items.append(1)
        ends.append((None, (0, number)))
    for at in range(1, len(rows)):
        upper, lower = rows[at - 1], rows[at]
        alone = [own(case, lower, choice) for choice in lower["options"]]
        for a, one in enumerate(upper["options"]):
            for b, other in enumerate(lower["options"]):
                found = pair(case, upper, one, lower, other)
                if found is None:
                    continue
                costs.append(found[0] + alone[b])
                pulls.append(other["pull_n"])
                changes.append(int(found[1]))
                items.append(int(found[2]))
                ends.append(((at - 1, a), (at, b)))
    # Into a node as much as out of it; into the first string one.
    lines, columns, values = [], [], []
    last = len(rows) - 1
    for column, (tail, head) in enumerate(ends):
        if tail is None:
            lines.append(len(node))
            columns.append(column)
            values.append(1.0)
        else:
            lines.append(node[tail])
            columns.append(column)
            values.append(-1.0)
        if head[0] < last:
            lines.append(node[head])
            columns.append(column)
            values.append(1.0)
    flow = coo_matrix((values, (lines, columns)), shape=(len(node) + 1, len(ends)))
    wanted = numpy.zeros(len(node) + 1)
    wanted[-1] = 1.0
    constraints = [LinearConstraint(flow.tocsr(), wanted, wanted)]
    rules = case["rules"]
    if rules["most_total_n"] is not None:
        constraints.append(LinearConstraint(numpy.array([pulls]) / rules["most_total_n"], -numpy.inf, 1.0))
    if rules["most_changes"] is not None:
        constraints.append(LinearConstraint(numpy.array([changes]), -numpy.inf, rules["most_changes"]))
    if rules["most_items"] is not None:
        constraints.append(LinearConstraint(numpy.array([items]), -numpy.inf, max(rules["most_items"], 1)))
    found = milp(
        numpy.array(costs),
        integrality=numpy.ones(len(costs)),
        bounds=Bounds(0, 1),
        constraints=constraints,
        options={"mip_rel_gap": 0.0, "time_limit": 600},
    )
    if found.status == 2:
        return None
    assert found.status == 0, found.message
    chosen = [column for column, value in enumerate(found.x) if value > 0.5]
    assert len(chosen) == len(rows)
    pull = sum(pulls[column] for column in chosen)
    assert rules["most_total_n"] is None or pull <= rules["most_total_n"] * (1 + 1e-12), pull
    path = sorted(ends[column][1] for column in chosen)
    return {
        "sum": math.fsum(costs[column] for column in chosen),
        "total_n": pull,
        "items": [rows[at]["options"][number]["item"] for at, number in path],
        "pairs": len(costs),
    }


def main():
    cases = json.loads(pathlib.Path(sys.argv[1]).read_text())
    solved = []
    for case in cases:
        best = solve(case)
        print(case["name"], best and best["sum"], best and best["pairs"], flush=True)
        solved.append({"name": case["name"], "pulls_n": case["pulls_n"], "best": best})
    versions = {name: importlib.metadata.version(name) for name in ("scipy", "numpy")}
    out = {"python": sys.version.split()[0], "versions": versions, "solver": "HiGHS", "solved": solved}
    path = pathlib.Path(__file__).parent.parent / "solved.json"
    path.write_text(json.dumps(out, indent=1) + "\n")


if __name__ == "__main__":
    main()
