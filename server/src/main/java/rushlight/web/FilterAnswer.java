package rushlight.web;

import java.util.List;
import rushlight.ask.Filter;
import rushlight.ask.ManSize;
import rushlight.situation.Situations;

/**
 * What a question asks beside the reps it counts.
 *
 * @param kind what it keeps to
 * @param values slugs, ids, words or numbers
 */
public record FilterAnswer(String kind, List<String> values) {
    static FilterAnswer of(Filter filter, Situations situations) {
        if (filter instanceof Filter.Prospects prospects) {
            return new FilterAnswer("prospects", prospects.ids());
        }
        if (filter instanceof Filter.Games games) {
            return new FilterAnswer("games", games.ids());
        }
        if (filter instanceof Filter.Opponents opponents) {
            return new FilterAnswer("opponents", opponents.names());
        }
        if (filter instanceof Filter.Teams teams) {
            return new FilterAnswer("teams", teams.names());
        }
        if (filter instanceof Filter.ClassYears years) {
            return new FilterAnswer("class-years", years.names());
        }
        if (filter instanceof ManSize size) {
            return new FilterAnswer(size.measure().slug() + "-" + size.bound().slug(), List.of(size.words()));
        }
        if (filter instanceof Filter.Levels levels) {
            return new FilterAnswer("levels", levels.names());
        }
        if (filter instanceof Filter.AtLeast least) {
            return new FilterAnswer("at-least-" + least.counted().slug(), List.of(Integer.toString(least.number())));
        }
        if (filter instanceof Filter.Top top) {
            return new FilterAnswer("top", List.of(Integer.toString(top.number())));
        }
        if (filter instanceof Filter.Order order) {
            return new FilterAnswer("order", List.of(order.direction().slug()));
        }
        if (filter instanceof Filter.Note note) {
            return new FilterAnswer("note", List.of(note.words()));
        }
        return ofTheBook(filter, situations);
    }

    private static FilterAnswer ofTheBook(Filter filter, Situations situations) {
        if (filter instanceof Filter.Verdicts verdicts) {
            return new FilterAnswer(
                    "verdicts",
                    verdicts.verdicts().stream().map(v -> v.slug()).sorted().toList());
        }
        if (filter instanceof Filter.Findings findings) {
            return new FilterAnswer("findings", findings.slugs());
        }
        if (filter instanceof Filter.Polarities polarities) {
            return new FilterAnswer(
                    "polarities",
                    polarities.polarities().stream().map(p -> p.slug()).sorted().toList());
        }
        if (filter instanceof Filter.Severities severities) {
            return new FilterAnswer(
                    "severities",
                    severities.severities().stream().map(s -> s.slug()).sorted().toList());
        }
        if (filter instanceof Filter.About about) {
            return new FilterAnswer(about.relation().slug(), about.slugs());
        }
        if (filter instanceof Filter.Kinds kinds) {
            return new FilterAnswer("kinds", kinds.classes().stream().sorted().toList());
        }
        if (filter instanceof Filter.Ways ways) {
            return new FilterAnswer(
                    "ways", ways.ways().stream().map(Filter.Ways.Way::name).toList());
        }
        Filter.Sides sides = (Filter.Sides) filter;
        return new FilterAnswer(
                "sides",
                List.of(
                        sides.firstName() + ": " + situations.phrase(sides.first()),
                        sides.secondName() + ": " + situations.phrase(sides.second())));
    }
}
