package rushlight.plan;

import java.util.Locale;
import java.util.Optional;
import rushlight.evidence.Retest;
import rushlight.findings.Finding;

/** Says a target in words, and how far to trust it. */
final class RetestWords {
    static final String TWO_RATES =
            "Two rates are compared here, so no single count would settle it: look at both again.";

    static final String NO_LINE = "Nothing is held against a line here, so no count would settle it.";

    private RetestWords() {}

    static String rate(Finding finding, RetestTarget figures, Retest retest, double perGame) {
        StringBuilder text = new StringBuilder();
        if (figures.clears().isPresent()) {
            text.append(act(finding, figures, figures.clears().getAsInt()))
                    .append(" would clear it (from two games or more)")
                    .append(improving(figures));
        } else if (figures.improves().isPresent()) {
            text.append("Nothing he does in the next ")
                    .append(figures.opportunities())
                    .append(" would clear it; ")
                    .append(act(finding, figures, figures.improves().getAsInt()))
                    .append(" would show him improving")
                    .append(luck(figures));
        } else {
            text.append("Nothing he does in the next ")
                    .append(figures.opportunities())
                    .append(" would tell a change from luck.");
        }
        return text.append(trust(figures, retest, perGame)).toString();
    }

    static String tally(Finding finding, RetestTarget figures) {
        return act(finding, figures, figures.clears().orElse(0)) + " would clear it; one more opens it again.";
    }

    private static String improving(RetestTarget figures) {
        if (figures.improves().isEmpty()) {
            return ", but luck alone could bring an unchanged player that far.";
        }
        return figures.improves().equals(figures.clears())
                ? luck(figures)
                : "; " + figures.count(figures.improves().getAsInt()) + " would show him improving" + luck(figures);
    }

    private static String luck(RetestTarget figures) {
        return ", which luck alone brings an unchanged player "
                + inHundred(figures.luck().orElse(0)) + ".";
    }

    private static String trust(RetestTarget figures, Retest retest, double perGame) {
        String risen = (figures.atMost() ? "down to " : "up to ")
                + percent(figures.atMost() ? 1 - retest.aim() : retest.aim());
        if (retest.enough().isEmpty()) {
            return " No number of chances up to " + Retest.FARTHEST + " would show reliably that he came " + risen
                    + ": what he does today lies too near to it.";
        }
        int enough = retest.enough().getAsInt();
        return " One who truly comes " + risen + " " + chances(figures, retest) + "."
                + (enough > figures.opportunities()
                        ? " " + enough + " chances would show it four times in five" + games(enough, perGame) + "."
                        : "");
    }

    private static String chances(RetestTarget figures, Retest retest) {
        int n = figures.opportunities();
        String clears = figures.clears().isEmpty()
                ? "is not cleared by so few chances"
                : "is cleared "
                        + inHundred(retest.shown(retest.events(figures.clears().getAsInt(), n), n));
        return figures.shown().isEmpty() || figures.improves().equals(figures.clears())
                ? clears
                : clears + " and shown to improve " + inHundred(figures.shown().getAsDouble());
    }

    private static String games(int enough, double perGame) {
        return perGame <= 0 ? "" : ", some " + (int) Math.ceil(enough / perGame) + " games at his pace";
    }

    /** "Went for the back on at most 1 of the next 12 reads": the finding's own sentence about what is to come. */
    private static String act(Finding finding, RetestTarget figures, int events) {
        Optional<String> pattern = finding.advice().sentence();
        if (pattern.isEmpty()) {
            return capital(figures.count(events)) + " in the next " + figures.opportunities() + " chances";
        }
        String said = pattern.orElseThrow()
                .replace("{events} times", events == 0 ? "not once" : figures.count(events) + " times")
                .replace("{events}", figures.count(events))
                .replace("{opportunities}", "the next " + figures.opportunities());
        return "\"" + (said.endsWith(".") ? said.substring(0, said.length() - 1) : said) + "\"";
    }

    static String inHundred(double chance) {
        long times = Math.round(100 * chance);
        if (times == 0 || times == 100) {
            return times == 0 ? "less than once in 100" : "nearly always";
        }
        return times == 1 ? "once in 100" : times + " times in 100";
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    /** With a capital at its beginning. */
    static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
