package rushlight.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import rushlight.knowledge.Taxonomy;

/** What terms of the book a question is about, and how the answers stand to them. */
final class Topics {
    private static final Set<Chip.Role> FOR_A_FIT = Set.of(Chip.Role.FACED, Chip.Role.DUTY);
    private static final Set<Chip.Role> STAGE = Set.of(Chip.Role.BLOCKER, Chip.Role.CONTEXT, Chip.Role.SIDE);

    private final Taxonomy taxonomy;
    private final Places places;

    Topics(Taxonomy taxonomy, Places places) {
        this.taxonomy = taxonomy;
        this.places = places;
    }

    List<Filter> of(Find find, Parts parts) {
        List<Filter> found = new ArrayList<>();
        switch (find) {
            case COUNTERS -> counters(parts, found);
            case DRILLS -> add(found, Filter.Relation.TRAINS, slugs(parts.parts()));
            case FINDINGS -> findings(parts, found);
            case TECHNIQUES -> techniques(parts, found);
            default -> {}
        }
        return found;
    }

    private void counters(Parts parts, List<Filter> found) {
        List<String> moves = new ArrayList<>();
        List<String> shown = new ArrayList<>();
        List<String> from = new ArrayList<>();
        for (Part part : parts.parts()) {
            String slug = best(part).orElse("");
            Optional<Places.Place> place = places.of(slug);
            Chip.Role role = place.map(Places.Place::role).orElse(Chip.Role.TOPIC);
            if (role == Chip.Role.FACED) {
                shown.add(slug);
            } else if (role == Chip.Role.ALIGNMENT) {
                from.add(slug);
            } else if (!slug.isEmpty() && !STAGE.contains(role) && !part.does(Act.PERHAPS)) {
                moves.add(slug);
            }
        }
        if (moves.isEmpty()) {
            parts.parts().stream().flatMap(this::moveWithin).limit(1).forEach(moves::add);
        }
        add(found, Filter.Relation.MOVE, moves);
        add(found, Filter.Relation.TRIGGER, shown);
        add(found, Filter.Relation.FROM, from);
    }

    /** "Clamps my rip" tells of the rip too. */
    private Stream<String> moveWithin(Part part) {
        boolean shown = best(part)
                .flatMap(places::of)
                .filter(place -> place.role() == Chip.Role.FACED)
                .isPresent();
        return !shown
                ? Stream.empty()
                : places.ranked(part.within()).stream()
                        .filter(place -> place.role() == Chip.Role.DID)
                        .map(Places.Place::slug);
    }

    private void findings(Parts parts, List<Filter> found) {
        List<String> named = new ArrayList<>();
        List<String> about = new ArrayList<>();
        for (String slug : slugs(parts.parts())) {
            boolean finding = taxonomy.concept(slug)
                    .filter(c -> c.classes().contains("Finding"))
                    .isPresent();
            (finding ? named : about).add(slug);
        }
        if (!named.isEmpty()) {
            found.add(new Filter.Findings(named));
        }
        add(found, Filter.Relation.ITSELF, about);
    }

    private void techniques(Parts parts, List<Filter> found) {
        Optional<Part> cue =
                parts.parts().stream().filter(part -> part.does(Act.RELATION)).findFirst();
        List<Part> all = parts.parts();
        if (cue.isEmpty()) {
            boolean compared = parts.doing(Act.FIND).stream()
                    .anyMatch(part -> part.value(Act.FIND)
                            .filter(Find.COMPARE.slug()::equals)
                            .isPresent());
            if (compared) {
                add(found, Filter.Relation.ITSELF, slugs(all));
            } else {
                list(found, slugs(all), parts.has(Act.KIND));
            }
        } else {
            int at = all.indexOf(cue.get());
            List<String> before = slugs(all.subList(0, at));
            List<String> after = slugs(all.subList(at + 1, all.size()));
            String[] relations = cue.get().value(Act.RELATION).orElseThrow().split("/", -1);
            if (!after.isEmpty()) {
                relate(found, relations[1], after);
                list(found, before, true);
            } else if (!before.isEmpty() && !relations[0].equals("-")) {
                relate(found, relations[0], before);
            } else {
                list(found, before, false);
            }
        }
        Set<String> kinds = new TreeSet<>();
        parts.doing(Act.KIND).forEach(part -> kinds.add(part.value(Act.KIND).orElseThrow()));
        if (!kinds.isEmpty()) {
            found.add(new Filter.Kinds(kinds));
        }
    }

    private void relate(List<Filter> found, String relation, List<String> slugs) {
        Filter.Relation how =
                Filter.Relation.valueOf(relation.toUpperCase(Locale.ROOT).replace('-', '_'));
        List<String> kept = how == Filter.Relation.RIGHT_FOR
                ? slugs.stream()
                        .filter(slug -> places.of(slug)
                                .filter(place -> FOR_A_FIT.contains(place.role()))
                                .isPresent())
                        .toList()
                : slugs;
        add(found, how, kept.isEmpty() ? slugs : kept);
    }

    /** One term is asked for itself; several groups are what the answers belong to. */
    private void list(List<Filter> found, List<String> slugs, boolean ofAKind) {
        boolean groups = slugs.stream().allMatch(slug -> taxonomy.narrower(slug).size() > 1);
        if (groups && (ofAKind || slugs.size() > 1)) {
            slugs.forEach(slug -> add(found, Filter.Relation.KIND_OF, List.of(slug)));
        } else {
            add(found, Filter.Relation.ITSELF, slugs);
        }
    }

    private static void add(List<Filter> found, Filter.Relation relation, List<String> slugs) {
        if (!slugs.isEmpty()) {
            found.add(new Filter.About(relation, slugs.stream().distinct().toList()));
        }
    }

    private List<String> slugs(List<Part> parts) {
        return parts.stream().flatMap(part -> best(part).stream()).toList();
    }

    /** The likeliest term of some words: what stands in a rep before what does not. */
    Optional<String> best(Part part) {
        return places.ranked(part.terms()).stream()
                .map(Places.Place::slug)
                .findFirst()
                .or(() -> part.terms().stream()
                        .map(label -> label.slug())
                        .sorted()
                        .findFirst());
    }
}
