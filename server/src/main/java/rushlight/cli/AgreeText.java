package rushlight.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import rushlight.agreement.Agreed;
import rushlight.agreement.Coefficient;
import rushlight.agreement.CrossCheck;
import rushlight.agreement.Difference;
import rushlight.agreement.FacetAgreement;
import rushlight.agreement.MatchedGame;
import rushlight.agreement.Proposal;
import rushlight.agreement.TagAgreement;
import rushlight.agreement.Trust;
import rushlight.film.Reading;
import rushlight.knowledge.Taxonomy;

/** How far two evaluators agree, as people read it. */
final class AgreeText {
    private static final int FEW = 8;

    private final Taxonomy taxonomy;
    private final boolean all;

    /**
     * @param all list every tag and every rep, not only those they differ about most
     */
    AgreeText(Taxonomy taxonomy, boolean all) {
        this.taxonomy = taxonomy;
        this.all = all;
    }

    Page of(CrossCheck check) {
        Page page = new Page();
        String title = check.first() + " and " + check.second();
        page.line(title);
        page.line("=".repeat(Math.min(Page.WIDTH, title.length())));
        page.wrapped("", "", common(check));
        check.games().forEach(game -> alone(page, check, game));
        if (check.pairs().size() < Trust.ENOUGH) {
            page.wrapped(
                    "",
                    "",
                    "Under " + Trust.ENOUGH + " reps in common no coefficient is worth printing: the counts alone.");
        }
        page.blank();
        page.wrapped(
                "",
                "",
                "How far they agree. Alpha is 1 where they always agree and 0 where chance would do as well; in"
                        + " brackets its likely range of 90 %.");
        List<FacetAgreement> always = check.facets().stream()
                .filter(facet -> !all && facet.agreed().same() == facet.agreed().common())
                .toList();
        check.facets().stream().filter(facet -> !always.contains(facet)).forEach(facet -> facet(page, facet));
        if (!always.isEmpty()) {
            page.wrapped(
                    "  ",
                    "      ",
                    "Always the same: "
                            + always.stream()
                                    .map(facet -> words(facet.column()))
                                    .collect(Collectors.joining(", ")) + ".");
        }
        tags(page, check);
        differences(page, check);
        return page;
    }

    private static String common(CrossCheck check) {
        List<String> whose = check.games().stream()
                .map(game -> game.prospect().name())
                .distinct()
                .toList();
        String men = whose.size() == 1 ? whose.get(0) : Numbers.of(whose.size(), "prospect");
        return Numbers.of(check.pairs().size(), "rep") + " of " + men + " in "
                + Numbers.of(check.games().size(), "game") + " were read by both; "
                + Numbers.of(check.differences().size(), "rep") + " differently in at least one column.";
    }

    private static void alone(Page page, CrossCheck check, MatchedGame game) {
        left(page, check.first(), game, game.firstAlone());
        left(page, check.second(), game, game.secondAlone());
        for (Proposal one : game.proposals()) {
            page.wrapped(
                    "  ",
                    "      ",
                    "Perhaps one rep in " + game.game().name() + ": "
                            + one.first().rep() + " of "
                            + check.first() + " and " + one.second().rep() + " of " + check.second() + ", "
                            + one.why().words() + ". Give both the same name to compare them.");
        }
    }

    private static void left(Page page, String who, MatchedGame game, List<Reading> readings) {
        if (!readings.isEmpty()) {
            page.wrapped(
                    "  ",
                    "      ",
                    who + " alone, " + game.game().name() + ": "
                            + readings.stream()
                                    .map(reading -> reading.rep().rep())
                                    .collect(Collectors.joining(", ")) + ".");
        }
    }

    private static void facet(Page page, FacetAgreement facet) {
        Agreed agreed = facet.agreed();
        page.wrapped(
                String.format("  %-18s %-12s", words(facet.column()), agreed.same() + " of " + agreed.common()),
                " ".repeat(34),
                say(agreed));
    }

    private static String say(Agreed agreed) {
        String beyond = agreed.ac1()
                .map(one -> "AC1 " + number(one) + ", for nearly every rep has the same value: ")
                .or(() -> agreed.alpha().map(one -> "alpha " + number(one) + ": "))
                .orElse("");
        return beyond + agreed.trust().words();
    }

    private static String number(Coefficient one) {
        return String.format(Locale.ROOT, "%.2f", one.value())
                + one.likely()
                        .map(range -> String.format(Locale.ROOT, " (%.2f to %.2f)", range.low(), range.high()))
                        .orElse("");
    }

    private void tags(Page page, CrossCheck check) {
        for (FacetAgreement facet : check.facets()) {
            List<TagAgreement> apart = facet.tags().stream()
                    .filter(tag -> all || tag.firstOnly() + tag.secondOnly() > 0)
                    .toList();
            if (apart.isEmpty()) {
                continue;
            }
            page.blank();
            page.line("Tags in " + words(facet.column()) + (all ? "" : " they differ about most"));
            apart.stream()
                    .limit(all ? apart.size() : FEW)
                    .forEach(tag -> page.wrapped(
                            String.format("  %-30s ", shown(tag.tag())),
                            " ".repeat(33),
                            "both " + tag.both() + ", " + check.first() + " alone " + tag.firstOnly() + ", "
                                    + check.second()
                                    + " alone " + tag.secondOnly() + ", of "
                                    + tag.agreed().common()
                                    + tagWords(tag.agreed())));
            more(page, apart.size());
        }
    }

    private static String tagWords(Agreed agreed) {
        boolean telling = agreed.trust() == Trust.LOW || agreed.trust() == Trust.TENTATIVE;
        return telling ? "; " + say(agreed) : "";
    }

    private void differences(Page page, CrossCheck check) {
        if (check.differences().isEmpty()) {
            return;
        }
        page.blank();
        page.line("Reps they read differently");
        check.differences().stream()
                .limit(all ? check.differences().size() : FEW)
                .forEach(one -> difference(page, check, one));
        more(page, check.differences().size());
    }

    private void difference(Page page, CrossCheck check, Difference difference) {
        Reading first = difference.pair().first();
        String other = difference.pair().second().rep().rep();
        String same = first.rep().rep().equals(other) ? "" : " (" + other + " of " + check.second() + ")";
        String where = check.games().stream()
                .filter(game -> game.game().id().equals(first.rep().game()))
                .map(game -> game.prospect().name() + ", " + game.game().name())
                .findFirst()
                .orElse("");
        page.line("  " + where + ", " + first.rep().rep() + same + when(first));
        for (Difference.Cell cell : difference.cells()) {
            page.wrapped(
                    String.format("    %-16s ", words(cell.column())),
                    " ".repeat(23),
                    check.first() + ": " + blank(cell.first()));
            page.wrapped(" ".repeat(21), " ".repeat(23), check.second() + ": " + blank(cell.second()));
        }
    }

    private static String when(Reading reading) {
        Optional<String> quarter = reading.one("quarter");
        return quarter.map(q -> ", Q" + q
                        + reading.one("clock").map(clock -> " " + clock).orElse(""))
                .orElse("");
    }

    private void more(Page page, int count) {
        if (!all && count > FEW) {
            page.line("  and " + (count - FEW) + " more; --all lists them.");
        }
    }

    private String shown(String tag) {
        return tag.startsWith("[")
                ? "[" + taxonomy.label(tag.substring(1, tag.length() - 1)) + "]"
                : taxonomy.label(tag);
    }

    private static String blank(String cell) {
        return cell.isEmpty() ? "nothing" : cell;
    }

    private static String words(String column) {
        return column.replace('_', ' ');
    }
}
