package rushlight.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Puts decisions on proposed reps: splits and merges, changed and added tags, chosen phases. The page does the same, held to the same cases. */
final class Reviewing {
    private static final int LETTERS = 26;

    private final Narration narration;
    private final Decisions decided;
    private final Kinds kinds;
    private final boolean openToo;
    private final List<Part> parts = new ArrayList<>();

    Reviewing(Narration narration, Decisions decided, Kinds kinds, boolean openToo) {
        this.narration = narration;
        this.decided = decided;
        this.kinds = kinds;
        this.openToo = openToo;
    }

    /** A tag where it stands in a rep; an added one has no key. */
    private record Item(String key, Mention said) {}

    /** A rep in the making. */
    private static final class Part {
        private final ProposedRep begun;
        private final String name;
        private final OptionalDouble start;
        private final int from;
        private final List<Mention> tags = new ArrayList<>();
        private final List<Segment> replays = new ArrayList<>();
        private Optional<String> phase;
        private OptionalDouble end;
        private int to;

        Part(ProposedRep begun, String name, OptionalDouble start, int from, Optional<String> phase) {
            this.begun = begun;
            this.name = name;
            this.start = start;
            this.from = from;
            this.phase = phase;
            this.end = begun.end();
            this.to = begun.to();
        }

        /** A part that begins in the look again at its rep has no end of its own: the rep was over by then. */
        ReviewedRep rep() {
            boolean over = isLater(start, end) && end.isPresent();
            return new ReviewedRep(
                    name,
                    new ProposedRep(
                            begun.ordinal(),
                            phase,
                            start,
                            over ? OptionalDouble.empty() : end,
                            from,
                            to,
                            replays,
                            tags));
        }
    }

    /** The reps that hold a tag. */
    List<ReviewedRep> of(Notes notes) {
        List<List<String>> keys = TagKeys.ofReps(notes);
        for (int i = 0; i < notes.reps().size(); i++) {
            rep(notes.reps().get(i), keys.get(i));
        }
        return parts.stream()
                .filter(part -> !part.tags.isEmpty())
                .map(Part::rep)
                .toList();
    }

    private void rep(ProposedRep rep, List<String> keys) {
        List<Item> items = items(rep, keys);
        if (items.isEmpty()) {
            return;
        }
        boolean goesOn = !keys.isEmpty() && !parts.isEmpty() && decided.merges().contains(keys.get(0));
        if (goesOn) {
            Part before = last();
            before.end = rep.end();
            before.to = rep.to();
            before.phase = before.phase.or(rep::phase);
        } else {
            String chosen = decided.phases().get(Integer.toString(rep.ordinal()));
            parts.add(new Part(
                    rep,
                    "",
                    rep.start(),
                    rep.from(),
                    Optional.ofNullable(chosen).or(rep::phase)));
        }
        last().replays.addAll(rep.replays());
        int split = 0;
        for (Item item : items) {
            boolean begins =
                    !item.key.isEmpty() && decided.splits().contains(item.key) && !item.key.equals(keys.get(0));
            if (begins) {
                split(rep, item, ++split);
            }
            if (holds(item)) {
                last().tags.add(item.said);
            }
        }
    }

    private void split(ProposedRep rep, Item item, int split) {
        Part before = last();
        OptionalDouble cue = cueAt(item.said.from());
        OptionalDouble start = isLater(cue, before.start) ? cue : before.start;
        if (isLater(start, before.start)) {
            before.end = start;
        }
        before.to = item.said.from();
        Optional<String> phase =
                Optional.ofNullable(decided.phases().get(item.key)).or(rep::phase);
        parts.add(new Part(rep, part(split), start, item.said.from(), phase));
    }

    private static String part(int split) {
        return split < LETTERS ? String.valueOf((char) ('a' + split)) : "-" + split;
    }

    private static boolean isLater(OptionalDouble one, OptionalDouble other) {
        return one.isPresent() && (other.isEmpty() || one.getAsDouble() > other.getAsDouble());
    }

    private OptionalDouble cueAt(int place) {
        OptionalDouble start = OptionalDouble.empty();
        for (Cue cue : narration.cues()) {
            if (cue.from() > place) {
                return start;
            }
            start = cue.start();
        }
        return start;
    }

    private Part last() {
        return parts.get(parts.size() - 1);
    }

    private boolean holds(Item item) {
        return item.key.isEmpty() || decided.chosen().getOrDefault(item.key, openToo);
    }

    /** The tags of a rep with those that were added, each behind the tag it was put behind. */
    private List<Item> items(ProposedRep rep, List<String> keys) {
        List<Decisions.Added> own = decided.added().stream()
                .filter(one -> one.rep() == rep.ordinal())
                .toList();
        List<Item> items = new ArrayList<>();
        own.stream().filter(one -> one.after().isEmpty()).forEach(one -> items.add(added(one, rep.from())));
        for (int i = 0; i < keys.size(); i++) {
            String key = keys.get(i);
            Mention said = rep.tags().get(i);
            items.add(new Item(key, changed(said, decided.changed().getOrDefault(key, said.concept()))));
            own.stream().filter(one -> one.after().equals(key)).forEach(one -> items.add(added(one, said.to())));
        }
        own.stream()
                .filter(one -> !one.after().isEmpty() && !keys.contains(one.after()))
                .forEach(one -> items.add(added(one, rep.to())));
        return items;
    }

    private Mention changed(Mention said, String concept) {
        if (concept.equals(said.concept())) {
            return said;
        }
        Actor actor = said.actor() == Actor.OTHER ? Actor.OTHER : actor(concept);
        return said.of(concept, actor);
    }

    private Item added(Decisions.Added one, int place) {
        Mention said = new Mention(
                one.concept(),
                Assertion.PERFORMED,
                actor(one.concept()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0,
                0,
                one.text(),
                place,
                place,
                Band.SURE,
                List.of());
        return new Item("", said);
    }

    private Actor actor(String concept) {
        return kinds.of(concept).map(Kinds.Kind::actor).orElse(Actor.PROSPECT);
    }
}
