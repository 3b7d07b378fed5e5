package rushlight.cli;

import java.util.List;
import rushlight.handbook.NumberAnswer;
import rushlight.knowledge.Taxonomy;

/** Says what a number of a front means, system by system. */
final class NumberText {
    private final Taxonomy taxonomy;

    NumberText(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    Page of(NumberAnswer answer) {
        Page page = new Page();
        page.wrapped("", "  ", sentence(answer));
        for (NumberAnswer.Meaning meaning : answer.meanings()) {
            String usual = meaning.rank() == 1 ? "" : " (seldom)";
            page.wrapped(
                    "  numbering " + meaning.system() + "   ",
                    "                ",
                    taxonomy.label(meaning.position()) + usual + alignments(meaning.alignments()));
        }
        if (answer.ambiguous() && answer.system().isEmpty()) {
            answer.unnamed()
                    .ifPresent(spot -> page.wrapped(
                            "", "  ", "A film log that names no system keeps it as \"" + taxonomy.label(spot) + "\"."));
            page.wrapped("", "  ", "Name the system with --numbering, or ask whose playbook the number is from.");
        }
        return page;
    }

    private static String sentence(NumberAnswer answer) {
        String number = answer.number();
        if (answer.system().isPresent()) {
            return "A " + number + " in numbering " + answer.system().get() + ":";
        }
        return answer.ambiguous()
                ? "A " + number + " is not one spot: it depends on whose numbers they are."
                : "A " + number + " is the same spot wherever it is used:";
    }

    private String alignments(List<String> alignments) {
        return alignments.isEmpty()
                ? ""
                : ", that is the "
                        + String.join(
                                " or ", alignments.stream().map(taxonomy::label).toList());
    }
}
