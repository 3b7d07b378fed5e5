package rushlight.findings;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Says a role fit in words: what film shows, what it does not, and of what there is no film. */
final class RoleWords {
    private RoleWords() {}

    static String say(List<RoleFit.Need> required, List<RoleFit.Need> preferred) {
        StringBuilder text = new StringBuilder();
        if (required.stream().allMatch(need -> need.shown() == Shown.SHOWN)) {
            text.append("All that is required is on film: ")
                    .append(named(required, RoleWords::name))
                    .append('.');
        } else {
            told(text, "Shown", required, Shown.SHOWN, RoleWords::name);
            told(text, "Not shown on this tape", required, Shown.NOT_SHOWN, RoleWords::counted);
            told(text, "Not enough tape", required, Shown.NO_TAPE, RoleWords::counted);
        }
        told(text, "Welcome and shown", preferred, Shown.SHOWN, RoleWords::name);
        return text.toString();
    }

    private static void told(
            StringBuilder text,
            String head,
            List<RoleFit.Need> needs,
            Shown shown,
            Function<RoleFit.Need, String> name) {
        List<RoleFit.Need> some =
                needs.stream().filter(need -> need.shown() == shown).toList();
        if (!some.isEmpty()) {
            text.append(text.isEmpty() ? "" : " ")
                    .append(head)
                    .append(": ")
                    .append(named(some, name))
                    .append('.');
        }
    }

    private static String named(List<RoleFit.Need> needs, Function<RoleFit.Need, String> name) {
        return needs.stream().map(name).collect(Collectors.joining(", "));
    }

    static String name(RoleFit.Need need) {
        String label = need.judged().finding().shown();
        return need.asked().without() ? "clear of \"" + label + "\"" : label;
    }

    private static String counted(RoleFit.Need need) {
        var rate = need.judged().outcome().rate();
        String count = rate.opportunities() == 0 ? "no chance" : rate.events() + " of " + rate.opportunities();
        return name(need) + " (" + count + ")";
    }
}
