package rushlight.notes;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;

/** Counts what a person would keep: of each rep as a set of rep, concept, assertion and actor, in general without the last. */
final class TagCounts {
    /** What is kept; of what is said in general, rep and actor are empty. */
    record Tag(String rep, String concept, String assertion, String actor) {}

    private TagCounts() {}

    static void add(Gold gold, Proposal.All read, BiPredicate<String, String> accepted, Tallies tallies) {
        Set<Tag> marked = new LinkedHashSet<>();
        Set<Tag> optional = new LinkedHashSet<>();
        Set<Tag> general = new LinkedHashSet<>();
        Set<Tag> open = new LinkedHashSet<>();
        for (Gold.Mark mark : gold.marks()) {
            Tag tag = new Tag(mark.rep(), mark.concept(), mark.assertion(), mark.actor());
            Tag statement = new Tag("", mark.concept(), mark.assertion(), "");
            boolean summary = mark.scope().equals("summary");
            if (mark.optional()) {
                (summary ? open : optional).add(summary ? statement : tag);
            } else if (!mark.isAside()) {
                (summary ? general : marked).add(summary ? statement : tag);
            }
        }
        Set<Tag> tags = new LinkedHashSet<>();
        Set<Tag> statements = new LinkedHashSet<>();
        for (Proposal said : read.live()) {
            if (said.rep().isEmpty()) {
                statements.add(new Tag("", said.concept(), said.assertion(), ""));
            } else {
                tags.add(new Tag(said.rep(), said.concept(), said.assertion(), said.actor()));
            }
        }
        count("rep tags", marked, optional, tags, accepted, tallies);
        count("statements", general, open, statements, accepted, tallies);
    }

    private static void count(
            String name,
            Set<Tag> marked,
            Set<Tag> optional,
            Set<Tag> proposed,
            BiPredicate<String, String> accepted,
            Tallies tallies) {
        Set<Tag> left = new LinkedHashSet<>(marked);
        for (Tag tag : proposed) {
            Optional<Tag> match =
                    left.stream().filter(gold -> fits(tag, gold, accepted)).findFirst();
            match.ifPresent(left::remove);
            if (match.isPresent()) {
                tallies.add(name, Tally.RIGHT);
            } else if (optional.stream().noneMatch(gold -> fits(tag, gold, accepted))) {
                tallies.add(name, Tally.WRONG);
            }
        }
        left.forEach(missed -> tallies.add(name, Tally.MISSED));
    }

    private static boolean fits(Tag tag, Tag gold, BiPredicate<String, String> accepted) {
        return tag.rep().equals(gold.rep())
                && tag.assertion().equals(gold.assertion())
                && tag.actor().equals(gold.actor())
                && accepted.test(tag.concept(), gold.concept());
    }
}
