package rushlight.notes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * One mention as a reader gives it, in the words of an annotator.
 *
 * @param rep {@code r1} for the first; empty for what is said in general
 * @param order from 1; 0 where it is no step
 * @param opinion -2 to 2
 * @param aside whether it was found and set aside: said again, taken back, of another rep
 */
record Proposal(
        String concept,
        String assertion,
        String actor,
        String rep,
        String side,
        String hand,
        String target,
        int order,
        int opinion,
        int from,
        int to,
        boolean aside) {
    private static final Set<String> ASIDE = Set.of(Assembly.SAID_AGAIN, Assembly.TAKEN_BACK, Assembly.OF_ANOTHER_REP);

    /** All that a reader gives of one text: its stretches, and the mentions in the order of the text. */
    record All(List<Gold.Stretch> segments, List<Proposal> mentions) {
        All {
            segments = List.copyOf(segments);
            mentions = mentions.stream()
                    .sorted(Comparator.comparingInt(Proposal::from))
                    .toList();
        }

        /** Those a person is shown. */
        List<Proposal> live() {
            return mentions.stream().filter(m -> !m.aside()).toList();
        }

        /** Those only that name a concept that was looked for: of another, marks that do not have it say nothing. */
        All ofConcepts(Predicate<String> lookedFor) {
            return new All(
                    segments,
                    mentions.stream().filter(m -> lookedFor.test(m.concept())).toList());
        }
    }

    static All of(Notes read) {
        List<Proposal> all = new ArrayList<>();
        read.statements().forEach(m -> all.add(of(m, "")));
        read.reps().forEach(rep -> rep.tags().forEach(m -> all.add(of(m, "r" + rep.ordinal()))));
        read.hidden().stream()
                .filter(h -> ASIDE.contains(h.why()))
                .forEach(h -> all.add(new Proposal(h.concept(), "", "", "", "", "", "", 0, 0, h.from(), h.to(), true)));
        return new All(
                read.segments().stream()
                        .map(s ->
                                new Gold.Stretch(s.kind().slug(), s.rep() == 0 ? "" : "r" + s.rep(), s.from(), s.to()))
                        .toList(),
                all);
    }

    private static Proposal of(Mention m, String rep) {
        return new Proposal(
                m.concept(),
                m.assertion().slug(),
                m.actor().slug(),
                rep,
                m.side().orElse(""),
                m.hand().orElse(""),
                m.target().orElse(""),
                m.order(),
                m.opinion(),
                m.from(),
                m.to(),
                false);
    }

    /** What a reader without fault would give. */
    static All of(Gold gold) {
        Stream<Proposal> all = gold.marks().stream()
                .map(m -> new Proposal(
                        m.concept(),
                        m.assertion(),
                        m.actor(),
                        m.scope().equals("summary") ? "" : m.rep(),
                        m.side(),
                        m.hand(),
                        m.target(),
                        m.order(),
                        m.opinion(),
                        m.from(),
                        m.to(),
                        m.isAside()));
        return new All(gold.segments(), all.toList());
    }
}
