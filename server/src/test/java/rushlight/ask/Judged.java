package rushlight.ask;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rushlight.evidence.Verdict;
import rushlight.findings.Counting;
import rushlight.findings.FindingBook;
import rushlight.findings.Polarity;
import rushlight.findings.Severity;
import rushlight.situation.Situation;

/**
 * A question with its reading, as a person judged it.
 *
 * @param id name in the file
 * @param question what is asked
 * @param find what it wants
 * @param situation the reps it counts
 * @param filters the rest
 * @param unread words that mean nothing
 */
record Judged(
        String id,
        String question,
        Find find,
        Optional<SituationPair> situation,
        Set<Filter> filters,
        List<String> unread) {
    /** The name without the mark of another reading that is right as well. */
    String name() {
        return id.replaceAll("\\|.*", "");
    }

    /** Whether a reading is as judged: all of it. */
    boolean fits(Asked asked) {
        return asked.find() == find
                && asked.situation().equals(situation)
                && Set.copyOf(asked.filters()).equals(filters)
                && asked.unread().stream().map(Asked.Unread::word).toList().equals(unread);
    }

    static List<Judged> all(String file, FindingBook findings) {
        try (InputStream in = Objects.requireNonNull(Judged.class.getResourceAsStream("/ask/" + file))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("id\t"))
                    .map(line -> of(line.split("\t", -1), findings))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Judged of(String[] cells, FindingBook findings) {
        Optional<SituationPair> pair = Optional.empty();
        if (!cells[3].equals("-")) {
            Situation opportunity = situation(cells[3], findings, true);
            pair = Optional.of(new SituationPair(
                    opportunity, cells[4].equals("=") ? opportunity : situation(cells[4], findings, false)));
        }
        Set<Filter> filters = cells[5].equals("-")
                ? Set.of()
                : Arrays.stream(cells[5].split(";", -1))
                        .map(text -> filter(text.strip(), findings))
                        .collect(Collectors.toSet());
        List<String> unread = cells[6].equals("-") ? List.of() : List.of(cells[6].split(" ", -1));
        return new Judged(cells[0], cells[1], Find.valueOf(cells[2].toUpperCase(Locale.ROOT)), pair, filters, unread);
    }

    private static Situation situation(String text, FindingBook findings, boolean opportunity) {
        return Situation.all(Arrays.stream(text.split(" & ", -1))
                .map(part -> condition(part.strip(), findings, opportunity))
                .toList());
    }

    private static Situation condition(String text, FindingBook findings, boolean opportunity) {
        if (text.startsWith("(")) {
            return Situation.any(
                    Arrays.stream(text.substring(1, text.length() - 1).split(" / ", -1))
                            .map(part -> condition(part, findings, opportunity))
                            .toList());
        }
        if (text.startsWith("@")) {
            Counting.Scope scope = findings.finding(text.substring(1))
                    .orElseThrow()
                    .counting()
                    .scope()
                    .orElseThrow();
            List<Situation> parts = new ArrayList<>(List.of(scope.opportunity()));
            if (!scope.duties().isEmpty()) {
                parts.add(Situation.anyOf("assignment", scope.duties()));
            }
            return opportunity ? Situation.all(parts) : scope.event();
        }
        if (text.startsWith("!")) {
            return Situation.not(condition(text.substring(1), findings, opportunity));
        }
        if (text.matches("\\w+:\\d+\\.\\.\\d+")) {
            String[] ends = text.substring(text.indexOf(':') + 1).split("\\.\\.", -1);
            return new Situation.Between(
                    text.substring(0, text.indexOf(':')),
                    OptionalInt.of(Integer.parseInt(ends[0])),
                    OptionalInt.of(Integer.parseInt(ends[1])));
        }
        String[] sides = text.split("=", 2);
        return Situation.anyOf(sides[0], List.of(sides[1].split("\\|", -1)));
    }

    private static Filter filter(String text, FindingBook findings) {
        String name = text.substring(0, text.indexOf('='));
        String value = text.substring(text.indexOf('=') + 1);
        List<String> list = List.of(value.split(",", -1));
        return switch (name) {
            case "prospects" -> new Filter.Prospects(list);
            case "games" -> new Filter.Games(list);
            case "opponents" -> new Filter.Opponents(list);
            case "levels" -> new Filter.Levels(list);
            case "findings" -> new Filter.Findings(list);
            case "top" -> new Filter.Top(Integer.parseInt(value));
            case "order" -> new Filter.Order(Filter.Direction.valueOf(upper(value)));
            case "note" -> new Filter.Note(value);
            case "kinds" -> new Filter.Kinds(Set.copyOf(list));
            case "verdicts" ->
                new Filter.Verdicts(
                        list.stream().map(v -> Verdict.valueOf(upper(v))).collect(Collectors.toSet()));
            case "polarities" ->
                new Filter.Polarities(
                        list.stream().map(v -> Polarity.valueOf(upper(v))).collect(Collectors.toSet()));
            case "severities" ->
                new Filter.Severities(
                        list.stream().map(v -> Severity.valueOf(upper(v))).collect(Collectors.toSet()));
            case "at-least" ->
                new Filter.AtLeast(
                        Filter.Counted.valueOf(upper(value.split(" ", -1)[0])),
                        Integer.parseInt(value.split(" ", -1)[1]));
            case "about" ->
                new Filter.About(
                        Filter.Relation.valueOf(upper(value.split(" ", -1)[0])),
                        List.of(value.split(" ", -1)[1].split(",", -1)));
            case "sides" -> sides(value, findings);
            default -> throw new IllegalArgumentException(text);
        };
    }

    private static Filter sides(String value, FindingBook findings) {
        List<String> two = Stream.of(value.split(" / ", -1)).toList();
        return new Filter.Sides(condition(two.get(0), findings, true), "", condition(two.get(1), findings, true), "");
    }

    private static String upper(String word) {
        return word.toUpperCase(Locale.ROOT).replace('-', '_');
    }

    /** The filters of a reading with the names of compared sides left out, which are wording. */
    static Asked plain(Asked asked) {
        List<Filter> filters = asked.filters().stream()
                .map(filter -> filter instanceof Filter.Sides sides
                        ? new Filter.Sides(sides.first(), "", sides.second(), "")
                        : filter)
                .toList();
        return new Asked(
                asked.question(),
                asked.find(),
                asked.text(),
                asked.situation(),
                filters,
                asked.unread(),
                asked.chips());
    }
}
