package rushlight.findings;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import rushlight.evidence.Rate;
import rushlight.evidence.Side;
import rushlight.evidence.Verdict;

/** Says a count in words: the claim first, then how sure it is, then what would settle it. */
final class Sentences {
    private Sentences() {}

    static String say(Finding finding, Outcome outcome, Optional<String> heavyOpponent, List<Judged.Bound> bounds) {
        StringBuilder text = new StringBuilder(word(finding, outcome));
        if (outcome.verdict() != Verdict.NOT_ENOUGH_TAPE) {
            heavyOpponent.ifPresent(opponent -> text.append(" More than half of it came against ")
                    .append(opponent)
                    .append('.'));
        }
        if (!bounds.isEmpty()) {
            Rate all = bounds.get(bounds.size() - 1).rate();
            int unknown = all.opportunities() - bounds.get(0).rate().opportunities();
            text.append(" Duty unknown on ")
                    .append(unknown)
                    .append(unknown == 1 ? " more rep: if it was his, " : " more reps: if all were his, ")
                    .append(all.events())
                    .append(" of ")
                    .append(all.opportunities())
                    .append('.');
        }
        return text.toString();
    }

    /** What a rule says, with the counts of the findings it rests on. */
    static String together(String sentence, List<Judged> from) {
        return sentence + " From "
                + from.stream()
                        .map(one -> one.finding().shown() + " ("
                                + one.outcome().rate().events() + " of "
                                + one.outcome().rate().opportunities() + ")")
                        .collect(Collectors.joining(", "))
                + ".";
    }

    private static String word(Finding finding, Outcome outcome) {
        return switch (outcome.verdict()) {
            case NOT_ENOUGH_TAPE -> tooFew(finding, outcome);
            case WATCH -> "Open: " + lower(claim(finding, outcome)) + "." + odds(finding, outcome) + more(outcome);
            case LIKELY -> "Probably: " + lower(claim(finding, outcome)) + "." + odds(finding, outcome) + more(outcome);
            case CONFIRMED -> claim(finding, outcome) + "." + odds(finding, outcome);
            case CLEARED -> cleared(finding) + ": " + lower(claim(finding, outcome)) + "." + odds(finding, outcome);
        };
    }

    private static String tooFew(Finding finding, Outcome outcome) {
        Rate rate = outcome.rate();
        if (rate.opportunities() == 0) {
            return "No chance on tape yet, so nothing is known.";
        }
        if (finding.measure() == Measure.DIFFERENCE && outcome.rows().size() == 2) {
            return "Only " + outcome.rows().get(0).rate().opportunities() + " and "
                    + chances(outcome.rows().get(1).rate().opportunities()) + " to compare. Too few to judge.";
        }
        String more = outcome.moreNeeded().isEmpty()
                ? "."
                : "; about " + outcome.moreNeeded().getAsInt() + " more would give an even chance of settling it.";
        return "Only " + chances(rate.opportunities()) + " on tape, " + events(rate.events()) + ". Too few to judge"
                + more;
    }

    private static String claim(Finding finding, Outcome outcome) {
        Optional<String> said = finding.advice().said(outcome.rate());
        if (said.isEmpty() || finding.measure() == Measure.DIFFERENCE) {
            return bare(finding.definition().isEmpty() ? finding.label() : finding.definition()) + ": "
                    + figures(finding, outcome);
        }
        return bare(said.orElseThrow()) + " (" + range(outcome) + ")";
    }

    private static String figures(Finding finding, Outcome outcome) {
        if (finding.measure() == Measure.DIFFERENCE && outcome.rows().size() == 2) {
            return row(outcome.rows().get(0)) + " against " + row(outcome.rows().get(1));
        }
        Rate rate = outcome.rate();
        return rate.events() + " of " + rate.opportunities()
                + outcome.share().stream()
                        .mapToObj(share -> " (" + percent(share) + ", " + range(outcome) + ")")
                        .findFirst()
                        .orElse("");
    }

    private static String row(Outcome.Row row) {
        return row.rate().events() + " of " + row.rate().opportunities() + " "
                + row.value().replace('-', ' ');
    }

    private static String range(Outcome outcome) {
        return outcome.shown()
                .map(shown -> "likely range " + Math.round(100 * shown.low()) + " to " + percent(shown.high()))
                .orElse("");
    }

    /** " About 93 in 100 that the rate is over the line of 20 %." */
    private static String odds(Finding finding, Outcome outcome) {
        if (outcome.probability().isEmpty()) {
            return "";
        }
        Standard standard = finding.standard();
        String side = standard.side().orElse(Side.ABOVE) == Side.ABOVE ? "over" : "under";
        String what = finding.measure() == Measure.DIFFERENCE ? "the difference" : "the true rate";
        return " " + inHundred(outcome.probability().getAsDouble()) + " that " + what + " is " + side + " the line of "
                + percent(standard.line().orElse(0)) + yours(standard) + ".";
    }

    private static String yours(Standard standard) {
        OptionalDouble house = standard.houseLine();
        return standard.line().equals(house) || house.isEmpty()
                ? ""
                : " (yours; house line " + percent(house.getAsDouble()) + ")";
    }

    private static String more(Outcome outcome) {
        if (outcome.needsAnotherGame()) {
            return " It hangs on one game; reps from another would settle it.";
        }
        return outcome.moreNeeded().isEmpty()
                ? ""
                : " Roughly an even chance that " + outcome.moreNeeded().getAsInt()
                        + (outcome.moreNeeded().getAsInt() == 1 ? " more settles it." : " more settle it.");
    }

    private static String cleared(Finding finding) {
        return finding.polarity() == Polarity.STRENGTH ? "Not a strength on this tape" : "No such problem on this tape";
    }

    static String inHundred(double probability) {
        if (probability > 0.99) {
            return "Better than 99 in 100";
        }
        return probability < 0.01 ? "Under 1 in 100" : "About " + Math.round(100 * probability) + " in 100";
    }

    static String percent(double rate) {
        return Math.round(100 * rate) + " %";
    }

    private static String chances(int count) {
        return count + (count == 1 ? " chance" : " chances");
    }

    private static String events(int count) {
        return count == 0 ? "no event" : count + (count == 1 ? " event" : " events");
    }

    private static String bare(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }

    private static String lower(String sentence) {
        return sentence.isEmpty()
                ? sentence
                : sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }
}
