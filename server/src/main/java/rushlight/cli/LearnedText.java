package rushlight.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rushlight.archive.LearnedWords.State;
import rushlight.archive.LearnedWords.Suggestion;
import rushlight.knowledge.Taxonomy;
import rushlight.notes.Learned;

/** What kept decisions teach, for people: each with the number by which it is taken, and where it was decided. */
final class LearnedText {
    private final Taxonomy taxonomy;

    LearnedText(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    String of(List<Suggestion> all) {
        if (all.isEmpty()) {
            return "The kept decisions teach nothing new: no words were tagged by hand, none were rejected twice.\n";
        }
        Page page = new Page();
        part(page, all, Learned.Kind.NAME, "Words that were tagged by hand");
        part(page, all, Learned.Kind.WARNING, "Words that were rejected again and again");
        page.wrapped(
                "",
                "",
                "rushlight notes --take N makes the words of a line a name of its term, --ignore N leaves them,"
                        + " --bring-back N undoes either.");
        return page.toString();
    }

    private void part(Page page, List<Suggestion> all, Learned.Kind kind, String title) {
        List<Integer> rows = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).learned().kind() == kind) {
                rows.add(i);
            }
        }
        if (rows.isEmpty()) {
            return;
        }
        page.line(title);
        for (int row : rows) {
            page.wrapped(String.format("%4d  ", row + 1), "      ", sentence(all.get(row)));
        }
        page.blank();
    }

    private String sentence(Suggestion one) {
        Learned learned = one.learned();
        String label = taxonomy.shown(learned.concept());
        String times = Numbers.of(learned.times(), "time");
        String words = "\u201C" + learned.words() + "\u201D";
        String said = learned.kind() == Learned.Kind.NAME
                ? words + " was tagged as " + label + " " + times + now(one)
                : words + " was rejected as " + label + " " + times + ", accepted "
                        + (learned.held() == 0 ? "never" : Numbers.of(learned.held(), "time"));
        return said + " (" + places(learned) + ")" + state(one.state());
    }

    private String now(Suggestion one) {
        return one.readAs().isEmpty() || one.state() == State.TAKEN
                ? ""
                : ", and is read as "
                        + one.readAs().stream().map(taxonomy::shown).collect(Collectors.joining(" and ")) + " now";
    }

    private static String state(State state) {
        return switch (state) {
            case OPEN -> ".";
            case TAKEN -> ". Taken.";
            case IGNORED -> ". Ignored.";
        };
    }

    private static String places(Learned learned) {
        Map<String, List<String>> byFile = new LinkedHashMap<>();
        for (Learned.Place place : learned.places()) {
            byFile.computeIfAbsent(place.file(), f -> new ArrayList<>())
                    .add(place.rep() == 0 ? "in general" : Integer.toString(place.rep()));
        }
        return byFile.entrySet().stream()
                .map(file -> file.getKey() + " rep "
                        + file.getValue().stream().distinct().collect(Collectors.joining(", ")))
                .collect(Collectors.joining("; "));
    }
}
