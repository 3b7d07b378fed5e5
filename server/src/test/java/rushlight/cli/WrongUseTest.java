package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;

/** What somebody reads who typed a command wrongly: what was wrong and what to write instead. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class WrongUseTest {
    private static final List<String> SENSELESS =
            List.of("x y", "-1", "1.5", "99999999999999999999", "2026-02-30", "25:99", "=", "a=b", "\u0000", "");

    /** Nothing is done with it: it only reads what is typed. */
    private final CommandLine program = Main.program();

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plan x --start yesterday | --start takes a day of the calendar such as 2026-08-03, not \"yesterday\".",
                "plan x --at noon | --at takes a time of day such as 15:30, not \"noon\".",
                "plan x --limit 3 | --limit takes KIND=N, not \"3\".",
                "compare Mordell | Say as many as are wanted of PROSPECT: two to four names or ids.",
                "serve --port abc | --port takes a whole number, in digits, not \"abc\".",
                "ask x --limit 99999999999 | --limit takes a smaller number, not \"99999999999\".",
                "ask x --limit | --limit lacks its value. Write --limit N: at most so many answers (10).",
                "ask x --limit 1 --limit 2 | --limit is there twice; write it once.",
                "ask x --lmit 3 | rushlight ask has no option --lmit.",
                "assess --all=3 | --all takes no value; write it alone.",
                "assess --format xml | --format takes one of text, json, not \"xml\".",
                "report Tavish Mordell | \"Mordell\" is more than rushlight report takes.",
                "asess | There is no command \"asess\".",
                "help asess | There is no command \"asess\".",
                "user add | Say NAME: name as it is shown, and typed to sign in.",
                "user add Orr | This needs --role ROLE: reader, evaluator or administrator.",
                "erase | Say PROSPECT: his name or id.",
            })
    void a_slip_is_told_with_what_to_write_instead(String typed, String told) {
        Said said = Said.to(typed.split(" ", -1));

        assertThat(said.code()).isEqualTo(2);
        assertThat(said.isPolite().err()).startsWith(told).contains("See: rushlight");
    }

    @Test
    void no_option_of_any_command_answers_a_senseless_value_with_the_words_of_a_programmer() {
        List<String> complaints = new ArrayList<>();
        for (List<String> command : commands(program, List.of())) {
            for (List<String> wrong : wrongly(command)) {
                complaint(wrong).ifPresent(complaints::add);
            }
        }

        assertThat(complaints)
                .hasSizeGreaterThan(200)
                .allSatisfy(told -> assertThat(told)
                        .doesNotContain("class ", "java.", "Exception", "int'", "index 0", "<", "${")
                        .matches("(?s)[-A-Z\"r].*[.)]"));
    }

    @Test
    void a_file_is_no_data_folder_for_whoever_takes_one() throws Exception {
        String file = Files.writeString(folder.resolve("friday.csv"), "rep").toString();
        List<List<String>> takers = commands(program, List.of()).stream()
                .filter(command -> at(command).getCommandSpec().findOption("--data") != null)
                .toList();

        assertThat(takers).hasSizeGreaterThan(20).allSatisfy(command -> {
            List<String> typed = with(command, "--data", file);
            assertThat(complaint(typed)).contains(file + " is a file, not a folder. Name a folder with --data.");
        });
    }

    /** Every option with a value that it cannot take, twice, with none and with one too many; and strange words. */
    private List<List<String>> wrongly(List<String> command) {
        List<List<String>> typed = new ArrayList<>();
        typed.add(command);
        typed.add(with(command, "--no-such-option=3"));
        typed.add(with(command, Collections.nCopies(9, "x").toArray(String[]::new)));
        for (OptionSpec option : at(command).getCommandSpec().options()) {
            String name = option.longestName();
            typed.add(with(command, name));
            typed.add(with(command, name, "--data"));
            typed.add(with(command, name, "1", name, "1"));
            for (String value : SENSELESS) {
                typed.add(with(command, name, value));
                typed.add(with(command, name + "=" + value));
            }
        }
        return typed;
    }

    /** What is said of it; empty where it can be read. */
    private Optional<String> complaint(List<String> typed) {
        try {
            program.parseArgs(typed.toArray(String[]::new));
            return Optional.empty();
        } catch (ParameterException e) {
            return Optional.of(WrongUse.sentence(e));
        }
    }

    private static List<List<String>> commands(CommandLine from, List<String> path) {
        List<List<String>> all = new ArrayList<>();
        from.getSubcommands().forEach((name, command) -> {
            List<String> here = with(path, name);
            all.add(here);
            all.addAll(commands(command, here));
        });
        return all;
    }

    private CommandLine at(List<String> path) {
        CommandLine command = program;
        for (String name : path) {
            command = Objects.requireNonNull(command.getSubcommands().get(name), name);
        }
        return command;
    }

    private static List<String> with(List<String> words, String... more) {
        return Stream.concat(words.stream(), Stream.of(more)).toList();
    }
}
