package rushlight.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine.Option;
import rushlight.archive.Archive;
import rushlight.archive.LearnedWords;
import rushlight.archive.LearnedWords.Outcome;
import rushlight.archive.LearnedWords.Suggestion;
import rushlight.web.Json;
import rushlight.web.LearnedAnswer;

/** What kept decisions on notes teach: shown, taken as names, ignored, brought back. */
final class LearnedWishes {
    @Option(
            names = "--learned",
            description = "what the kept decisions of --data teach: words that were tagged by hand, and words that were"
                    + " rejected again and again")
    private boolean learned;

    @Option(
            names = "--take",
            paramLabel = "N|KEY",
            description =
                    "take words of --learned as a name, by the number or the key there; notes know it from then on")
    private List<String> take = List.of();

    @Option(names = "--ignore", paramLabel = "N|KEY", description = "never be asked about these words again")
    private List<String> ignore = List.of();

    @Option(
            names = "--bring-back",
            paramLabel = "N|KEY",
            description =
                    "make it a suggestion again: a name that was taken is none any more, what was ignored is shown")
    private List<String> back = List.of();

    /** Whether anything of it was asked for. */
    boolean any() {
        return learned || !take.isEmpty() || !ignore.isEmpty() || !back.isEmpty();
    }

    /** Does what was asked for; gives the exit code. */
    int done(DataFolder data, boolean json, PrintWriter out, PrintWriter err) {
        try (Archive archive = data.open()) {
            LearnedWords words = LearnedWords.of(archive);
            List<Suggestion> listed = words.all();
            // Each is done whether or not the one before it was.
            boolean taken = all(take, listed, words::take, out, err);
            boolean ignored = all(ignore, listed, words::ignore, out, err);
            boolean broughtBack = all(back, listed, words::bringBack, out, err);
            if (learned && json) {
                out.print(Json.text(LearnedAnswer.of(words.all())));
            } else if (learned) {
                out.print(new LearnedText(archive.book().taxonomy()).of(words.all()));
            }
            return taken && ignored && broughtBack ? 0 : 1;
        }
    }

    /** Numbers are those of the list before anything of this was done. */
    private static boolean all(
            List<String> wishes,
            List<Suggestion> listed,
            Function<String, Outcome> deed,
            PrintWriter out,
            PrintWriter err) {
        boolean done = true;
        for (Map.Entry<String, Outcome> one : outcomes(wishes, listed, deed)) {
            if (one.getValue() instanceof Outcome.Done said) {
                out.println(said.said());
                said.notes().forEach(note -> out.println("Note: " + note));
            } else if (one.getValue() instanceof Outcome.Refused refused) {
                refused.reasons().forEach(err::println);
                done = false;
            } else {
                err.println("Nothing of what was learned goes by \"" + one.getKey()
                        + "\". rushlight notes --learned lists numbers and keys.");
                done = false;
            }
        }
        return done;
    }

    private static List<Map.Entry<String, Outcome>> outcomes(
            List<String> wishes, List<Suggestion> listed, Function<String, Outcome> deed) {
        List<Map.Entry<String, Outcome>> all = new ArrayList<>();
        for (String wish : wishes) {
            all.add(Map.entry(wish, deed.apply(numbered(wish, listed).orElse(wish))));
        }
        return all;
    }

    private static Optional<String> numbered(String wish, List<Suggestion> listed) {
        if (!wish.matches("\\d{1,6}")) {
            return Optional.empty();
        }
        int at = Integer.parseInt(wish) - 1;
        return at < 0 || at >= listed.size()
                ? Optional.empty()
                : Optional.of(listed.get(at).learned().key());
    }
}
