"""The figures of checks that go another way than the code: quadrature, an integrated equation, a counted geometry, a sum
over forces. Nothing here is read from the library: each route has its own transcription of what its source prints.
Takes the ids of the checks. Prints what each route gives, and the ids of routes without a check."""

import json
import sys

import amounts, drops, films, gels, heating, oils, packs, shapes  # noqa: E401, F401: each brings its routes
import point_forces
from routes import ROUTES

point_forces.check_spread()
wanted = json.load(sys.stdin)
found = {name: ROUTES[name]() for name in wanted if name in ROUTES}
print(json.dumps({"found": found, "lost": [name for name in ROUTES if name not in found]}, default=float))
