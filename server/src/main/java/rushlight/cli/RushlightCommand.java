package rushlight.cli;

import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program itself; what it can do are its commands. */
@Command(
        name = "rushlight",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        synopsisSubcommandLabel = "COMMAND",
        description = {"Turns watched reps of edge defenders into statements that lead back to the film.", ""},
        footer = {
            "",
            "Where to start:",
            "  rushlight demo                           an invented league, assessed",
            "  rushlight import my-log.csv              keep your own film log",
            "  rushlight assess \"Jory Penwick\"          what he is, what he lacks, how sure, which reps",
            "  rushlight assess --log my-log.csv        the same, without keeping anything",
            "  rushlight ask \"edge players who wrong-arm kick-outs\"",
            "  rushlight plan \"Jory Penwick\"            weeks of practice for what the film shows",
            "  rushlight report \"Jory Penwick\"          two pages to print",
            "  rushlight serve                          all of it in a browser",
            "  rushlight counters bull-rush --when \"sits down\"",
            "  rushlight technique wrong-arm            one page of the book",
            "",
            "Exit codes: 0 done, 1 the input has errors, 2 wrong use, 3 something broke.",
            "Tab completion for bash and zsh: source <(rushlight generate-completion)"
        },
        subcommands = {
            DemoCommand.class,
            ImportCommand.class,
            NotesCommand.class,
            AssessCommand.class,
            AskCommand.class,
            CompareCommand.class,
            AgreeCommand.class,
            PlanCommand.class,
            CountersCommand.class,
            TechniqueCommand.class,
            AnswersCommand.class,
            TeachCommand.class,
            ReportCommand.class,
            CheckCommand.class,
            ExportCommand.class,
            EraseCommand.class,
            PublishCommand.class,
            BackupCommand.class,
            RestoreCommand.class,
            ReindexCommand.class,
            ServeCommand.class,
            UserCommand.class,
            AutoComplete.GenerateCompletion.class,
            HelpCommand.class
        })
final class RushlightCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new CommandLine.ParameterException(
                spec.commandLine(),
                "Say what to do: demo, import, notes, assess, ask, compare, agree, plan, report, counters, technique, answers,"
                        + " teach, check, export, erase, backup, restore, serve or user.");
    }
}
