package rushlight.cli;

import java.io.PrintWriter;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
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
import rushlight.archive.Book;
import rushlight.film.Prospect;
import rushlight.findings.Assessment;
import rushlight.plan.Plan;
import rushlight.plan.PlanAnswer;
import rushlight.plan.PlanRequest;
import rushlight.plan.Planner;
import rushlight.report.practice.FieldSheet;
import rushlight.report.practice.Practice;
import rushlight.report.practice.PracticeCalendar;
import rushlight.web.Json;
import rushlight.web.PlanSheet;
import rushlight.web.Practices;

/** Turns what film shows of a prospect into weeks of practice. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = {
            "Turns what the film shows of a prospect into weeks of practice.",
            "",
            "What to work on and why, session by session, within limits whose source is named. The best schedule"
                    + " there is, or how much better one could be. A suggestion: certified coaches and licensed medical"
                    + " staff decide.",
            ""
        },
        footer = {
            "",
            "Without --profile nobody has said whose rules hold: no full contact, and nothing against another man.",
            "A number may be made stricter than the rules, never looser.",
            "",
            "Examples:",
            "  rushlight plan \"Oren Castellow\"",
            "  rushlight plan \"Oren Castellow\" --weeks 6 --sessions 3 --minutes 20 --start 2026-08-03",
            "  rushlight plan \"Oren Castellow\" --preset off-season --work-on set-recognition",
            "  rushlight plan \"Oren Castellow\" --start 2026-08-03 --format ics --at 15:30 > castellow.ics",
            "  rushlight plan \"Oren Castellow\" --format sheet > castellow.html",
            "  rushlight plan \"Oren Castellow\" --profile high-school-2014 --checked 2026-08-01 --approved thud"
        })
final class PlanCommand implements Callable<Integer> {
    /** How a plan is written. */
    enum Kind {
        TEXT,
        JSON,
        ICS,
        SHEET
    }

    @Mixin
    private DataFolder data = new DataFolder();

    @Parameters(paramLabel = "PROSPECT", arity = "1..*", description = "name or id")
    private List<String> name = List.of();

    @Mixin
    private PlanOptions options = new PlanOptions();

    @Option(
            names = "--format",
            paramLabel = "text|json|ics|sheet",
            defaultValue = "text",
            description = "to read (default), for programs, for a calendar, or a sheet to print for the field")
    private Kind format = Kind.TEXT;

    @Option(names = "--at", paramLabel = "TIME", description = "with ics: when a session begins, such as 15:30")
    private Optional<LocalTime> at = Optional.empty();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (!data.isThere()) {
            err().println("There is no film in " + data.folder()
                    + " yet. Import a film log first: rushlight import FILE.");
            return 1;
        }
        Ahead.begin(Planner::prepare);
        try (Archive archive = data.open()) {
            String wanted = String.join(" ", name);
            Optional<Prospect> who = ProspectNames.one(wanted, archive.prospects(), err());
            if (who.isEmpty()) {
                return 1;
            }
            Optional<Assessment> assessment = archive.assess(who.get().id());
            if (assessment.isEmpty()) {
                err().println("There is no film of \"" + wanted + "\" yet.");
                return 1;
            }
            Optional<PlanRequest> request = options.request(slugs -> slugs(archive.book(), slugs));
            if (request.isEmpty()) {
                return 1;
            }
            if (format == Kind.ICS && request.get().time().start().isEmpty()) {
                throw new ParameterException(
                        spec.commandLine(),
                        "A calendar wants dates: name the first day with --start, such as --start 2026-08-03.");
            }
            return plan(archive.book(), assessment.get(), request.get());
        }
    }

    private int plan(Book book, Assessment assessment, PlanRequest request) {
        PlanAnswer answer = book.planner().plan(assessment, request);
        boolean made = answer instanceof PlanAnswer.Made;
        PlanText text = new PlanText(book.taxonomy());
        if (format == Kind.JSON) {
            out().print(Json.text(
                    PlanSheet.of(assessment.prospect(), answer, book.training().notices())));
        } else if (answer instanceof PlanAnswer.Made plan) {
            write(book, plan.plan(), text);
        } else {
            err().print(text.none(assessment.prospect().name(), answer));
        }
        return made ? 0 : 1;
    }

    private void write(Book book, Plan plan, PlanText text) {
        if (format == Kind.TEXT) {
            out().print(text.of(plan));
            return;
        }
        Practice practice = new Practices(book.taxonomy(), book.training()).of(PlanSheet.of(plan));
        if (format == Kind.ICS) {
            new PracticeCalendar(practice, at).write(out(), Instant.now());
        } else {
            out().print(new FieldSheet().of(practice));
        }
        out().flush();
    }

    /** The slugs of what was named; empty, and told, where a name is nobody's. */
    private Optional<List<String>> slugs(Book book, List<String> names) {
        Lookup lookup = new Lookup(book, err());
        List<String> slugs = new ArrayList<>();
        for (String one : names) {
            Optional<String> slug = book.taxonomy().concept(one).isPresent() ? Optional.of(one) : lookup.anything(one);
            if (slug.isEmpty()) {
                return Optional.empty();
            }
            slugs.add(slug.get());
        }
        return Optional.of(slugs);
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
