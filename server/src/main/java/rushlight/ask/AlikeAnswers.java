package rushlight.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import rushlight.evidence.Line;
import rushlight.film.Prospect;
import rushlight.findings.Countable;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Facet;
import rushlight.situation.Facets;

/** Players like another one, and why in words. */
final class AlikeAnswers {
    private static final int REASONS = 3;
    private static final double TELLING = 0.02;

    private final Taxonomy taxonomy;
    private final Facets facets;
    private final Countable countable;

    /** Something that two players have in common or not. */
    private record Trait(Profiles.Part part, String value, double his, double other, double weight) {}

    AlikeAnswers(Taxonomy taxonomy, Facets facets, Countable countable) {
        this.taxonomy = taxonomy;
        this.facets = facets;
        this.countable = countable;
    }

    Answers.Listed of(Scene scene) {
        List<String> named = scene.prospects();
        if (named.isEmpty()) {
            return Answers.Listed.nothing("The question names nobody whom the others should be like.");
        }
        String like = named.get(0);
        Profiles profiles = scene.footage().once(Profiles.class, footage -> Profiles.of(footage, countable));
        if (profiles.reps(like) < Line.FLOOR) {
            return Answers.Listed.nothing("There is not enough film of him to say what he is like: "
                    + profiles.reps(like) + " things he did are on it, and it takes " + Line.FLOOR + ".");
        }
        Prospect him = scene.footage().prospects().stream()
                .filter(prospect -> prospect.id().equals(like))
                .findFirst()
                .orElseThrow();
        List<Near> all = new ArrayList<>();
        for (Prospect other : scene.footage().prospects()) {
            if (!other.id().equals(like) && profiles.reps(other.id()) >= Line.FLOOR) {
                all.add(new Near(other, 1 - profiles.distance(like, other.id())));
            }
        }
        if (all.isEmpty()) {
            return Answers.Listed.nothing("There is film of nobody else to compare him with.");
        }
        all.sort(Comparator.comparingDouble((Near one) -> -one.likeness())
                .thenComparing(one -> one.prospect().name()));
        List<Near> top = scene.top(all);
        return Answers.Listed.of(
                top.size(),
                scene.window().of(top).stream()
                        .map(one -> alike(profiles, him, one))
                        .toList());
    }

    /** A player with his likeness, before anybody says why. */
    private record Near(Prospect prospect, double likeness) {}

    private Answer.Alike alike(Profiles profiles, Prospect him, Near near) {
        Prospect other = near.prospect();
        List<Trait> common = new ArrayList<>();
        List<Trait> apart = new ArrayList<>();
        for (Profiles.Part part : profiles.parts()) {
            Map<String, Double> his = part.of(him.id());
            Map<String, Double> theirs = part.of(other.id());
            Set<String> values = new TreeSet<>(his.keySet());
            for (String value : values) {
                double one = his.getOrDefault(value, 0.0);
                double two = theirs.getOrDefault(value, 0.0);
                double both = Math.min(one, two) - part.league().mean(value);
                common.add(new Trait(part, value, one, two, both));
                apart.add(new Trait(part, value, one, two, Math.abs(one - two)));
            }
        }
        List<String> reasons = told(common, true);
        String because = reasons.isEmpty()
                ? "Neither stands out from the league; their shares lie close."
                : String.join(" ", reasons);
        return new Answer.Alike(other, near.likeness(), because, reasons, told(apart, false));
    }

    private List<String> told(List<Trait> traits, boolean withLeague) {
        return traits.stream()
                .filter(trait -> trait.weight() >= TELLING)
                .sorted(Comparator.comparingDouble((Trait trait) -> -trait.weight())
                        .thenComparing(Trait::value))
                .limit(REASONS)
                .map(trait -> told(trait, withLeague))
                .toList();
    }

    private String told(Trait trait, boolean withLeague) {
        String facet = facets.named(trait.part().facet())
                .map(Facet::words)
                .orElse(trait.part().facet());
        String shares = percent(trait.his()) + " and " + percent(trait.other());
        String league =
                withLeague ? ", the league " + percent(trait.part().league().mean(trait.value())) : "";
        return Character.toUpperCase(facet.charAt(0)) + facet.substring(1) + " " + taxonomy.label(trait.value()) + ": "
                + shares + league + ".";
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }
}
