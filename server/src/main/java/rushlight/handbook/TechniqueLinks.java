package rushlight.handbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rushlight.knowledge.Relations;
import rushlight.knowledge.Taxonomy;

/** Which relations of the book stand on the page of a concept, under which words, and in which order. */
enum TechniqueLinks {
    BROADER("broader", "A kind of"),
    SPOT("atPosition", "Spot"),
    REQUIRES("requires", "Needs first"),
    HELPED_BY("helpedBy", "Helped by"),
    ATTACKS("attacks", "Goes at"),
    FROM("from", "Used from"),
    BEATS("beats", "Beats"),
    BEATEN_BY("^beats", "Beaten by"),
    OPENS("opens", "Opens"),
    SETS_UP("setsUp", "Sets up"),
    SET_UP_BY("^setsUp", "Set up by"),
    MADE_OF("^partOf", "Made of"),
    PART_OF("partOf", "Part of"),
    COMMON_FAULT("commonFault", "What goes wrong"),
    HAPPENS_IN("^commonFault", "Seen with"),
    SHOWS("shows", "Points to a lack of"),
    SHOWN_BY("^shows", "Missing when he shows"),
    TRAINS("trains", "Trains"),
    DRILLS("^trains", "Drills"),
    TRAIN_FIRST("trainFirst", "Train first"),
    STARTER_DRILL("starterDrill", "Begin with"),
    STARTS("^starterDrill", "First drill for"),
    FIRST_FOR("^trainFirst", "First to train for"),
    MUST_SHOW("mustShow", "Must show"),
    MUST_BE_WITHOUT("mustBeWithout", "Must be without"),
    MAY_SHOW("mayShow", "Good to show"),
    BETTER_WITHOUT("betterWithout", "Better without"),
    WANTED_IN("^mustShow", "Asked of"),
    WELCOME_IN("^mayShow", "Good to show as"),
    KEEPS_FROM("^mustBeWithout", "Not wanted in"),
    SPEAKS_AGAINST("^betterWithout", "Speaks against"),
    DUTY("duty", "His when his duty is"),
    EXPLAINED_BY("explainedBy", "May be explained by"),
    CONTRADICTS("contradicts", "Speaks against"),
    NEEDED_FOR("^requires", "Needed for"),
    HELPS("^helpedBy", "Helps"),
    ATTACKED_BY("^attacks", "Attacked by"),
    ALIGNMENTS("^atPosition", "Alignments here"),
    USED_HERE("^from", "Used from here"),
    OPENED_BY("^opens", "Opened by"),
    KINDS("narrower", "Kinds"),
    NEAR("near", "See also");

    private final String property;
    private final String title;

    TechniqueLinks(String property, String title) {
        this.property = property;
        this.title = title;
    }

    static List<TechniqueAnswer.Relation> of(String slug, Taxonomy taxonomy, Relations relations) {
        List<TechniqueAnswer.Relation> found = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (TechniqueLinks link : values()) {
            List<String> concepts = link.concepts(slug, taxonomy, relations).stream()
                    .filter(other -> taxonomy.concept(other).isPresent() && !other.equals(slug))
                    .filter(other -> link != NEAR || !told.contains(other))
                    .sorted(
                            link == TRAIN_FIRST
                                    ? Comparator.comparingInt(other -> 0)
                                    : Comparator.comparing(taxonomy::label).thenComparing(other -> other))
                    .toList();
            told.addAll(concepts);
            if (!concepts.isEmpty()) {
                found.add(new TechniqueAnswer.Relation(link.word(), link.title, concepts));
            }
        }
        return List.copyOf(found);
    }

    /** What programs call it: the property, or {@code inverse} and the property read backwards. */
    private String word() {
        return property.startsWith("^") ? "inverse-" + property.substring(1) : property;
    }

    private List<String> concepts(String slug, Taxonomy taxonomy, Relations relations) {
        return switch (this) {
            case BROADER -> taxonomy.concept(slug).map(c -> c.broader()).orElse(List.of());
            case KINDS ->
                taxonomy.narrower(slug).stream()
                        .filter(other -> taxonomy.concept(other)
                                .filter(c -> c.broader().contains(slug))
                                .isPresent())
                        .toList();
            case TRAIN_FIRST -> relations.list(slug, property);
            case FIRST_FOR -> relations.listing(slug, property.substring(1));
            case NEAR -> List.copyOf(relations.near(slug));
            default ->
                property.startsWith("^") ? relations.to(slug, property.substring(1)) : relations.from(slug, property);
        };
    }
}
