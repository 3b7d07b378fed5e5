package rushlight.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rushlight.archive.Archive;
import rushlight.archive.DemoLeague;
import rushlight.findings.Assessment;
import rushlight.web.AssessAnswer;
import rushlight.web.Json;

/** Shows what the program says of a league that nobody ever played in. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        description = {
            "Shows an invented league, assessed.",
            "",
            "Puts the league into a data folder of its own and says of each prospect what he is, what he lacks, how"
                    + " sure that is, and which reps say so. Every name in it is made up.",
            ""
        })
final class DemoCommand implements Callable<Integer> {
    @Option(
            names = "--data",
            paramLabel = "DIR",
            converter = Folder.class,
            defaultValue = "${sys:user.home}/.rushlight-demo",
            description = "the league's data folder (now: ${DEFAULT-VALUE})")
    private Path folder = Path.of(".");

    @Mixin
    private FormatOption format = new FormatOption();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        try (Archive archive = Archive.open(folder)) {
            DemoLeague.into(archive);
            List<Assessment> assessments = archive.assess();
            if (format.isJson()) {
                out.print(Json.text(assessments.stream().map(AssessAnswer::of).toList()));
                return 0;
            }
            int reps = assessments.stream().mapToInt(Assessment::reps).sum();
            out.println("An invented league: " + assessments.size() + " prospects, " + reps + " reps.");
            out.println();
            AssessText text = new AssessText(archive.book().taxonomy(), Depth.SHORT);
            assessments.forEach(one -> out.println(text.of(one)));
            out.println("Read on:");
            out.println("  rushlight assess --data " + folder + " \""
                    + assessments.get(0).prospect().name() + "\"");
            out.println("  rushlight assess --help     what the words mean");
            return 0;
        }
    }
}
