#!/usr/bin/env python3
"""Judges the answers to questions.tsv from the data, without the program that answers them.

It reads the film as Turtle (`rushlight export FILE.ttl` of the invented league), the book as Turtle and what the league was
made to show (demo-data/intended.csv), counts by itself, and writes answers.tsv: question, answer, grade (3 best, 0 wrong).

    python3 judge.py FILM.ttl ONTOLOGY_FOLDER INTENDED.csv questions.tsv > answers.tsv

How it grades:
* players: by the lower end of the 90 % Jeffreys interval (the upper end where the least are asked for), ties by events, then
  name; the first three 3, the next three 2, the next four 1. Without an event nobody is an answer, unless the least are asked for.
* reps: every rep that is like that, 3.
* techniques, counters, drills: the very relation 3; by a wider term 2; by a narrower one 1. Counters of the very move and
  answer 3, of a wider one 2, general ones 1.
* findings: what the league was made to show, with that verdict 3, with another 0. What it was not made to show is not judged.
* comparisons of two kinds of reps: as players, by the lower end of the 90 % Newcombe interval of the difference.
* players like another one: by the mean cosine of the plain shares of openings, of fits and of moves in paired counters; graded
  as players.
"""
import csv, math, re, sys
from collections import defaultdict
from rdflib import Graph, Namespace, RDF, RDFS, URIRef, Literal
from rdflib.namespace import SKOS
from rdflib.collection import Collection
from scipy.stats import beta

RL = Namespace("https://rushlight.example/def#")
KB = "https://rushlight.example/id/"
SH = Namespace("http://www.w3.org/ns/shacl#")
SHAPE = "https://rushlight.example/shape/"
import glob, os

film = Graph().parse(sys.argv[1], format="turtle")
book = Graph()
for f in sorted(glob.glob(os.path.join(sys.argv[2], "*.ttl"))):
    if "/teaching-" not in f:
        book.parse(f, format="turtle")
INTENDED = list(csv.DictReader(open(sys.argv[3])))
slug = lambda n: str(n).rsplit("/", 1)[-1].rsplit("#", 1)[-1]
kb = lambda s: URIRef(KB + s)

broader = defaultdict(set)
for s, o in book.subject_objects(SKOS.broader):
    broader[slug(s)].add(slug(o))
_wider = {}
def wider(s):
    if s not in _wider:
        seen, todo = set(), [s]
        while todo:
            at = todo.pop()
            if at not in seen:
                seen.add(at)
                todo += broader[at]
        _wider[s] = seen
    return _wider[s]
label = {slug(s): str(o) for s, o in book.subject_objects(SKOS.prefLabel)}
concepts = set(label)
classes = defaultdict(set)
for s, o in book.subject_objects(RDF.type):
    classes[slug(s)].add(slug(o))

def texts(s, p): return [str(o) for o in book.objects(s, RL[p])]
# ---- facts of the reps ----
COLUMN = {}
for c in book.subjects(RDF.type, RL.Column):
    COLUMN[slug(book.value(c, RL.facet))] = (str(book.value(c, RL.columnName)), book.value(c, RL["list"]) is not None)
HIDEABLE = set()
VIEWS = {"hands", "feet", "eyes", "pads"}
for c in book.subjects(RDF.type, RL.Column):
    if str(book.value(c, RL.columnName)) == "not_seen":
        HIDEABLE = {str(x) for x in Collection(book, book.value(c, RL.oneOf))}
STEP = {"him": {}, "blocker": {}}
for f in book.subjects(RDF.type, RL.StepFacet):
    if slug(f) != "openingMove":
        STEP[str(book.value(f, RL.by))][slug(f)] = {slug(o) for o in book.objects(f, RL.ofClass)}

def alone(s, top="setup-move"):
    return s != top and (not broader[s] or any(alone(u) for u in broader[s]))
def opens(s):
    return classes[s] & {"RushMove", "RushFamily"} and alone(s) and "finish-technique" not in wider(s)

class Rep: pass
reps = []
order_of_step = lambda n: int(str(n).rsplit("/", 1)[-1])
for r in film.subjects(RDF.type, RL.Reading):
    x = Rep()
    parts = str(r).split("/data/rep/")[1].split("/")
    x.prospect, x.game, x.rep, x.by = parts[0], parts[1], parts[2], parts[4]
    facts, number = defaultdict(set), {}
    for p, o in film.predicate_objects(r):
        p = slug(p)
        if p in ("hisStep", "blockerStep", "log", "type", "rep"):
            continue
        facts[p].add(slug(o) if isinstance(o, URIRef) else str(o))
    steps = sorted([(order_of_step(o), "him", slug(film.value(o, RL.does))) for o in film.objects(r, RL.hisStep)]
                   + [(order_of_step(o), "blocker", slug(film.value(o, RL.does))) for o in film.objects(r, RL.blockerStep)])
    for _, who, did in steps:
        for facet, kinds in STEP[who].items():
            if classes[did] & kinds:
                facts[facet].add(did)
    for _, who, did in steps:
        if who == "him" and opens(did):
            facts["openingMove"].add(did)
            break
    log = film.value(r, RL.log)
    charted = {str(o) for o in film.objects(log, RL.charted)}
    hidden = facts.get("notSeen", set())
    seen = {"assignment", "assignment_source"}
    for facet, (name, many) in COLUMN.items():
        if name == "exchange":
            if steps: seen.add(name)
        elif (name in charted) if many else bool(facts.get(facet)):
            seen.add(name)
    if "faults" in seen and "faults" not in hidden:
        seen |= VIEWS
    x.seen = seen - hidden
    known = facts.get("assignment") and facts["assignment"] != {"assignment-unknown"} and facts.get("assignmentSource") != {"unknown"}
    if not known:
        facts["assignment"] = {"assignment-unknown"}
        facts["assignmentSource"] = {"unknown"}
    elif not facts.get("assignmentSource"):
        facts["assignmentSource"] = {"stated"}
    x.tagged = dict(facts)
    x.closed = {k: set().union(*[wider(v) if v in concepts else {v} for v in vs]) for k, vs in facts.items()}
    game = film.value(log, RL.game)
    x.opponent = str(film.value(game, RL.opponent) or "")
    x.note = " ".join(facts.get("note", []))
    reps.append(x)
# where two watched a game, the first evaluator's reading of a rep counts
first = defaultdict(list)
for x in sorted(reps, key=lambda x: x.by != "m-ordway"):
    same = first[(x.prospect, x.game, x.rep)]
    clash = lambda a, b: any(a.tagged.get(f) and b.tagged.get(f) and a.tagged[f] != b.tagged[f] for f in ("quarter", "clock", "down"))
    if all(clash(o, x) for o in same):
        same.append(x)
tape = [x for some in first.values() for x in some if x.tagged.get("confidence") != {"low"}]
NAME = {slug(p): str(film.value(p, RDFS.label)) for p in set(film.objects(None, RL.prospect))}

# ---- conditions ----
def leaf(facet, values, x): return bool(x.closed.get(facet, set()) & set(values))
def cond(text):
    """A condition of questions.tsv: a test, the values it reads by facet, and those under a negation."""
    if " & " in text and not (text.startswith("(") and text.endswith(")") and text.count("(") == 1):
        parts = [cond(t) for t in split(text, " & ")]
        return (lambda x: all(p[0](x) for p in parts), sum([p[1] for p in parts], []), sum([p[2] for p in parts], []))
    if text.startswith("(") :
        parts = [cond(t) for t in text[1:-1].split(" / ")]
        return (lambda x: any(p[0](x) for p in parts), sum([p[1] for p in parts], []), sum([p[2] for p in parts], []))
    if text.startswith("!"):
        t, reads, _ = cond(text[1:])
        return (lambda x: not t(x), reads, reads)
    if text.startswith("@"):
        return shape(book.value(kb(text[1:]), RL.event))
    if ":" in text:
        facet, span = text.split(":")
        low, high = map(int, span.split(".."))
        return (lambda x: any(low <= int(v) <= high for v in x.tagged.get(facet, ())), [(facet, "")], [])
    facet, values = text.split("=")
    values = values.split("|")
    return (lambda x: leaf(facet, values, x), [(facet, v) for v in values], [])
def split(text, by):
    out, depth, at = [], 0, ""
    for token in re.split(r"( & )", text):
        depth += token.count("(") - token.count(")")
        if token == by and depth == 0:
            out.append(at); at = ""
        else:
            at += token
    return out + [at]
def shape(node):
    tests, reads, absent = [], [], []
    def add(c):
        tests.append(c[0]); reads.extend(c[1]); absent.extend(c[2])
    for p in book.objects(node, SH.property):
        facet = slug(book.value(p, SH.path))
        has = book.value(p, SH.hasValue)
        q = book.value(p, SH.qualifiedValueShape)
        v = lambda n: slug(n) if isinstance(n, URIRef) else str(n)
        if has is not None:
            vals = [v(has)]
            add((lambda x, f=facet, w=vals: leaf(f, w, x) if f != "seen" else set(w) <= x.seen, [(facet, vals[0])], []))
        elif q is not None:
            vals = [v(n) for n in Collection(book, book.value(q, SH["in"]))]
            add((lambda x, f=facet, w=vals: leaf(f, w, x), [(facet, w) for w in vals], []))
        else:
            low, high = book.value(p, SH.minInclusive), book.value(p, SH.maxInclusive)
            lo = int(low) if low is not None else -10**9
            hi = int(high) if high is not None else 10**9
            add((lambda x, f=facet, lo=lo, hi=hi: any(lo <= int(n) <= hi for n in x.tagged.get(f, ())), [(facet, "")], []))
    for n in book.objects(node, SH["and"]):
        for part in Collection(book, n): add(shape(part))
    for n in book.objects(node, SH["or"]):
        parts = [shape(part) for part in Collection(book, n)]
        add((lambda x, ps=parts: any(p[0](x) for p in ps), sum([p[1] for p in parts], []), sum([p[2] for p in parts], [])))
    for n in book.objects(node, SH["not"]):
        t, r, _ = shape(n)
        add((lambda x, t=t: not t(x), r, r))
    return (lambda x: all(t(x) for t in tests), reads, absent)

narrower = defaultdict(set)
for c in concepts:
    for w in wider(c): narrower[w].add(c)
def columns(reads):
    need = set()
    for facet, value in reads:
        if facet == "repClass":
            need |= set(texts(kb(value), "reads"))
        elif facet != "seen":
            need.add(COLUMN[facet][0] if facet in COLUMN else "exchange")
            for one in narrower[value] if value in concepts else ():
                need |= set(texts(kb(one), "seenIn"))
    return need & HIDEABLE
def pair(opp, ev):
    """Tests of the chance and of the event; not seen is not absent."""
    if opp.startswith("@") and " & " in opp:
        finding, rest = opp.split(" & ", 1)
        (chance, event), more = pair(finding, finding), cond(rest)
        return (lambda x: chance(x) and more[0](x), event)
    if opp.startswith("@"):
        f = kb(opp[1:])
        o, e = shape(book.value(f, RL.opportunity)), shape(book.value(f, RL.event))
        duties = {slug(d) for d in book.objects(f, RL.duty)}
        need = columns(e[1]) | columns(o[2]) | (set(texts(f, "needs")) & HIDEABLE)
        return (lambda x: o[0](x) and need <= x.seen and (not duties or leaf("assignment", duties, x)), e[0])
    o = cond(opp)
    if ev == "=":
        need = columns(o[2])
        return (lambda x: o[0](x) and need <= x.seen, o[0])
    e = cond(ev)
    need = columns(e[1]) | columns(o[2])
    return (lambda x: o[0](x) and need <= x.seen, e[0])

def jeffreys(x, n):
    low = 0 if x == 0 else beta.ppf(.05, x + .5, n - x + .5)
    high = 1 if x == n else beta.ppf(.95, x + .5, n - x + .5)
    return low, high
def wilson(x, n, z=1.6448536269514722):
    p = x / n; d = 1 + z * z / n; c = p + z * z / (2 * n); h = z * math.sqrt(p * (1 - p) / n + z * z / (4 * n * n))
    return (c - h) / d, (c + h) / d
def graded(names): return [(n, 3 if i < 3 else 2 if i < 6 else 1) for i, n in enumerate(names[:10])]

def within(filters, some):
    for k, v in filters:
        if k == "prospects": ids = v.split(","); some = [x for x in some if x.prospect in ids]
        if k == "games": some = [x for x in some if any(x.game == g or x.game.startswith(g + "-") for g in v.split(","))]
        if k == "opponents": some = [x for x in some if x.opponent in v.split(",")]
        if k == "note": some = [x for x in some if v.lower() in re.sub(r"\W+", " ", x.note.lower())]
    return some
def counts(some, chance, event):
    n, x = defaultdict(int), defaultdict(int)
    for r in some:
        if chance(r):
            n[r.prospect] += 1
            x[r.prospect] += event(r)
    return n, x
def players(opp, ev, filters):
    chance, event = pair(opp, ev)
    n, x = counts(within(filters, tape), chance, event)
    f = dict(filters)
    least = f.get("order") == "least"
    if "at-least" in f:
        what, number = f["at-least"].split()
        who = [p for p in n if (n if what == "opportunities" else x)[p] >= int(number)]
    else:
        who = list(n)
    if not least: who = [p for p in who if x[p] > 0]
    key = (lambda p: (jeffreys(x[p], n[p])[1], -n[p], NAME[p])) if least else (lambda p: (-jeffreys(x[p], n[p])[0], -x[p], NAME[p]))
    who = sorted(who, key=key)
    return graded(who[: int(f.get("top", 10))])
def rep_ids(opp, ev, filters):
    some = within(filters, tape)
    if opp != "-":
        chance, event = pair(opp, ev)
        some = [r for r in some if chance(r) and event(r)]
    return [("/".join((r.prospect, r.game, r.rep)), 3) for r in sorted(some, key=lambda r: (r.prospect, r.game, r.rep))]

# ---- the book ----
def forward(prop, terms):
    out = {}
    for t in terms:
        for w in wider(t):
            objs = {slug(o) for o in book.objects(kb(w), RL[prop])}
            if prop == "requires":
                for l in book.objects(kb(w), RL.requiresOneOf): objs |= {slug(o) for o in Collection(book, l)}
            for o in objs: out[o] = max(out.get(o, 0), 3 if w == t else 2)
    return out
def backward(prop, terms):
    out = {}
    pairs = [(slug(s), slug(o)) for s, o in book.subject_objects(RL[prop])]
    if prop == "requires":
        for s, l in book.subject_objects(RL.requiresOneOf): pairs += [(slug(s), slug(o)) for o in Collection(book, l)]
    for s, o in pairs:
        for t in terms:
            g = 3 if o == t else 2 if o in wider(t) else 1 if t in wider(o) else 0
            if g: out[s] = max(out.get(s, 0), g)
    return out
RELATION = {"beats": ("beats", 0), "beaten-by": ("beats", 1), "needed-for": ("requires", 1), "requires": ("requires", 0),
            "sets-up": ("setsUp", 0), "set-up-by": ("setsUp", 1), "attacks": ("attacks", 0), "from": ("from", 0), "fault-of": ("commonFault", 1)}
def terms(filters):
    found = None
    for k, v in filters:
        if k != "about": continue
        rel, slugs = v.split(" ")
        slugs = slugs.split(",")
        if rel == "itself": some = {s: 3 for s in slugs}
        elif rel == "kind-of": some = {n: 3 if s in broader[n] else 1 for s in slugs for n in narrower[s] - set(slugs)}
        elif rel == "right-for":
            some = {}
            for r in book.subjects(RDF.type, RL.FitRule):
                if slug(book.value(r, RL.block)) in slugs and slug(book.value(r, RL.assignment)) in slugs:
                    for o in book.objects(r, RL.right): some[slug(o)] = 3
        else:
            prop, fwd = RELATION[rel]
            some = (forward if fwd else backward)(prop, slugs)
        some = {s: g for s, g in some.items() if rel == "itself" or s not in slugs}
        found = some if found is None else {s: min(g, some[s]) for s, g in found.items() if s in some}
    kinds = dict(filters).get("kinds")
    if kinds: found = {s: g for s, g in (found or {}).items() if classes[s] & set(kinds.split(","))}
    return sorted((found or {}).items())
def counters(filters):
    about = dict(v.split(" ") for k, v in filters if k == "about")
    move, trigger = about.get("move"), about.get("trigger")
    out = {}
    for p in book.subjects(RDF.type, RL.Pairing):
        m, t = book.value(p, RL.primary), book.value(p, RL.trigger)
        m, t = m and slug(m), t and slug(t)
        gm = 3 if not move or m == move else 1 if m is None else 2 if m in wider(move) else 0
        gt = 3 if not trigger or t == trigger else 1 if t is None else 2 if t in wider(trigger) or trigger in wider(t) else 0
        if gm and gt:
            c = slug(book.value(p, RL.counter))
            key = c if trigger else c + "@" + (t or "")
            out[key] = max(out.get(key, 0), min(gm, gt))
    return sorted(out.items())
def drills(wanted):
    """Drills that train the term itself, the skills a fault shows to be missing, or what a finding trains first."""
    skills = {}
    starters = set()
    for w in wanted:
        if "Finding" in classes[w]:
            l = book.value(kb(w), RL.trainFirst)
            for i, s in enumerate(Collection(book, l)) if l is not None else (): skills[slug(s)] = max(skills.get(slug(s), 0), 3 if i == 0 else 2)
            starters |= {slug(o) for o in book.objects(kb(w), RL.starterDrill)}
        else:
            skills[w] = 3
            for o in book.objects(kb(w), RL.shows): skills[slug(o)] = 3
            for o in book.objects(kb(w), RL.requires): skills[slug(o)] = max(skills.get(slug(o), 0), 1)
    out = {s: 3 for s in starters}
    for d, s in book.subject_objects(RL.trains):
        for w, g in skills.items():
            if slug(s) == w or w in wider(slug(s)): out[slug(d)] = max(out.get(slug(d), 0), g if slug(s) == w else max(1, g - 1))
    return sorted(out.items())
POLARITY = {slug(f): slug(book.value(f, RL.polarity)) for f in book.subjects(RDF.type, RL.Finding) if book.value(f, RL.polarity)}
SEVERITY = {slug(f): slug(book.value(f, RL.severity)) for f in book.subjects(RDF.type, RL.Finding) if book.value(f, RL.severity)}
BY_NAME = {v: k for k, v in NAME.items()}
def found(filters, as_players):
    f = dict(filters)
    verdicts = set(f.get("verdicts", "likely,confirmed").split(","))
    out = []
    for row in INTENDED:
        if row["finding"] == "primary": continue
        who, what, said = BY_NAME[row["prospect"]], row["finding"], set(row["verdict"].split("|"))
        if "prospects" in f and who not in f["prospects"].split(","): continue
        if "findings" in f and what not in f["findings"].split(","): continue
        if "polarities" in f and POLARITY.get(what) not in f["polarities"].split(","): continue
        if "severities" in f and SEVERITY.get(what) not in f["severities"].split(","): continue
        name = who if as_players else who + "/" + what
        if said <= verdicts: out.append((name, 3))
        elif not said & verdicts: out.append((name, 0))
    return out
def sides(opp, ev, filters):
    f = dict(filters)
    a, b = f["sides"].split(" / ")
    chance, event = pair(opp, ev)
    ca, cb = cond(a)[0], cond(b)[0]
    some = within(filters, tape)
    n1, x1 = counts(some, lambda r: chance(r) and ca(r), event)
    n2, x2 = counts(some, lambda r: chance(r) and cb(r), event)
    rank = []
    for p in NAME:
        if n1[p] and n2[p]:
            p1, p2 = x1[p] / n1[p], x2[p] / n2[p]
            low = p1 - p2 - math.hypot(p1 - wilson(x1[p], n1[p])[0], wilson(x2[p], n2[p])[1] - p2)
            if p1 > p2 or "prospects" in f: rank.append((-low, -x1[p], NAME[p], p))
    return graded([r[3] for r in sorted(rank)])
def cosine(a, b):
    dot = sum(a[k] * b.get(k, 0) for k in a)
    norm = math.sqrt(sum(v * v for v in a.values()) * sum(v * v for v in b.values()))
    return dot / norm if norm else 0
def like(who):
    rush = lambda r: "pass-rush" in r.tagged.get("phase", ()) and "exchange" in r.seen and not leaf("openingMove", ["rush-duty"], r)
    paired = lambda r: leaf("repClass", ["paired-counter"], r)
    prof = {p: [defaultdict(int), defaultdict(int), defaultdict(int)] for p in NAME}
    for r in tape:
        for v in r.tagged.get("openingMove", ()) if rush(r) else (): prof[r.prospect][0][v] += 1
        for v in r.tagged.get("fit", ()): prof[r.prospect][1][v] += 1
        for v in r.tagged.get("move", ()) if paired(r) else (): prof[r.prospect][2][v] += 1
    others = sorted((p for p in NAME if p != who), key=lambda p: -sum(cosine(a, b) for a, b in zip(prof[who], prof[p])))
    return graded(others)

print("# Right answers to questions.tsv, judged from the data by judge.py: question, answer, grade (3 best, 0 wrong).")
print("question\tanswer\tgrade")
for line in open(sys.argv[4]):
    if line.startswith("#") or line.startswith("id\t"): continue
    q, text, find, opp, ev, filters, unread = line.rstrip("\n").split("\t")
    fl = [] if filters == "-" else [tuple(p.split("=", 1)) for p in filters.split(";")]
    keys = dict(fl)
    if find == "prospects": got = found(fl, True) if "verdicts" in keys else players(opp, ev, fl)
    elif find == "reps": got = rep_ids(opp, ev, fl)
    elif find == "techniques": got = terms(fl)
    elif find == "counters": got = counters(fl)
    elif find == "drills":
        wanted = [s for k, v in fl if k == "about" for s in v.split(" ")[1].split(",")]
        if not wanted: wanted = [r["finding"] for r in INTENDED if BY_NAME[r["prospect"]] in keys["prospects"].split(",") and POLARITY.get(r["finding"]) == "gap" and set(r["verdict"].split("|")) <= {"likely", "confirmed"}]
        got = drills(wanted)
    elif find == "findings": got = found(fl, False)
    elif find == "similar": got = like(keys["prospects"])
    elif "sides" in keys: got = sides(opp, ev, fl)
    elif opp != "-": got = players(opp, ev, fl)
    else: got = [(p + "/" + f, g) for pf, g in found(fl, False) for p, f in [pf.split("/")]]
    for answer, grade in got: print(q, answer, grade, sep="\t")
