package rushlight.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.archive.Archive;
import rushlight.archive.SavedQuestions;
import rushlight.ask.Answers;
import rushlight.ask.SavedQuestion;
import rushlight.web.AskAnswer;
import rushlight.web.Json;
import rushlight.web.QuestionsAnswer;

/** Answers a question in a coach's own words. */
@Command(
        name = "ask",
        mixinStandardHelpOptions = true,
        description = {
            "Answers a question in your own words, and says how it read it.",
            "",
            "Players, reps, techniques, counters, drills, findings, a comparison, or players like another one. Words it"
                    + " made nothing of are named.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  rushlight ask edge players who wrong-arm kick-outs",
            "  rushlight ask \"counters to a bull rush when the tackle sits down\"",
            "  rushlight ask --save spillers edge players who wrong-arm kick-outs",
            "  rushlight ask --saved             every question that was saved",
            "  rushlight ask --again spillers    one of them again, on the film as it is now"
        })
final class AskCommand implements Callable<Integer> {
    private static final int LONGEST = 2_000;

    @Mixin
    private DataFolder data = new DataFolder();

    @Parameters(paramLabel = "QUESTION", arity = "0..*", description = "the question, with or without quotes")
    private List<String> words = List.of();

    @Mixin
    private FormatOption format = new FormatOption();

    @Option(names = "--limit", paramLabel = "N", defaultValue = "10", description = "at most so many answers (10)")
    private int limit = 10;

    @Option(names = "--save", paramLabel = "NAME", description = "keep the question under this name")
    private Optional<String> save = Optional.empty();

    @Option(names = "--saved", description = "list the questions that were saved")
    private boolean saved;

    @Option(names = "--again", paramLabel = "NAME", description = "ask a saved question")
    private Optional<String> again = Optional.empty();

    @Option(names = "--forget", paramLabel = "NAME", description = "forget a saved question")
    private Optional<String> forget = Optional.empty();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        String question = String.join(" ", words).strip();
        if (question.isEmpty() && !saved && again.isEmpty() && forget.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "Ask something, as in: rushlight ask edge players who wrong-arm kick-outs");
        }
        if (question.length() > LONGEST) {
            throw new ParameterException(
                    spec.commandLine(),
                    "The question has " + question.length() + " characters; at most " + LONGEST + " are read.");
        }
        if (limit < 1) {
            throw new ParameterException(spec.commandLine(), "--limit takes 1 or more.");
        }
        if (!data.isThere()) {
            err().println("There is no film in " + data.folder()
                    + " yet. Import a film log first: rushlight import FILE,");
            err().println("or look at the invented league: rushlight demo");
            return 1;
        }
        try (Archive archive = data.open()) {
            return saved ? list(archive) : forget.isPresent() ? forget(archive) : answer(archive, question);
        }
    }

    private int answer(Archive archive, String question) {
        String asked = question;
        if (again.isPresent()) {
            Optional<SavedQuestion> kept = SavedQuestions.of(archive).named(again.get());
            if (kept.isEmpty()) {
                return nobody(archive, again.get());
            }
            asked = kept.get().question();
        }
        String text = asked;
        Answers answers = archive.watch(footage -> archive.book().answer(footage, text, Answers.Window.first(limit)));
        if (save.isPresent()) {
            SavedQuestions.of(archive).save(save.get(), text, "");
            err().println("Saved as \"" + save.get() + "\".");
        }
        out().print(format.print(
                AskAnswer.of(answers, archive.book().situations()),
                () -> new AskText(archive.book().taxonomy()).of(answers)));
        return 0;
    }

    private int list(Archive archive) {
        List<SavedQuestion> all = SavedQuestions.of(archive).all();
        if (format.isJson()) {
            out().print(Json.text(QuestionsAnswer.of(all)));
            return 0;
        }
        if (all.isEmpty()) {
            out().println("No question was saved yet. Save one: rushlight ask --save NAME QUESTION");
        }
        all.forEach(one -> out().print(new Page().wrapped(one.name() + ": ", "    ", one.question())));
        return 0;
    }

    private int forget(Archive archive) {
        String name = forget.orElseThrow();
        if (!SavedQuestions.of(archive).forget(name)) {
            return nobody(archive, name);
        }
        out().println("Forgotten: \"" + name + "\".");
        return 0;
    }

    private int nobody(Archive archive, String name) {
        String known = String.join(
                ", ",
                SavedQuestions.of(archive).all().stream()
                        .map(SavedQuestion::name)
                        .toList());
        err().println("No question was saved as \"" + name + "\"."
                + (known.isEmpty() ? "" : " There are: " + known + "."));
        return 1;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
