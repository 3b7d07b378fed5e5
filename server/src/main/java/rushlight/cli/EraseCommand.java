package rushlight.cli;

import java.io.Console;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.accounts.AuditLog;
import rushlight.archive.Archive;
import rushlight.film.Prospect;
import rushlight.store.Erased;

/** Erases one prospect. */
@Command(
        name = "erase",
        mixinStandardHelpOptions = true,
        description = {
            "Erases everything that is kept of one prospect.",
            "",
            "Film, history, opinions, projections, plans, reports. It cannot be taken back, so his name is asked for once more. In texts about others his name is blacked"
                    + " out. Give him what is kept of him first, if he wants it: rushlight export --person. Stop the"
                    + " server meanwhile.",
            ""
        },
        footer = {
            "",
            "Example:",
            "  rushlight erase \"Oren Halloway\" --confirm \"Oren Halloway\"",
        })
final class EraseCommand implements Callable<Integer> {
    private static final int SHORT = 12;

    @Mixin
    private DataFolder data = new DataFolder();

    @Parameters(paramLabel = "PROSPECT", description = "his name or id")
    private String name = "";

    @Option(names = "--confirm", paramLabel = "NAME", description = "his name once more (otherwise it is asked for)")
    private Optional<String> confirmed = Optional.empty();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        if (!data.isThere()) {
            err.println("There is no data folder " + data.folder() + ", and so nobody in it.");
            return 1;
        }
        try (Archive archive = data.open()) {
            archive.erasing().finishLast();
            Optional<Prospect> found = ProspectNames.one(name, archive.prospects(), err);
            if (found.isEmpty()) {
                return 1;
            }
            Prospect prospect = found.get();
            if (!confirmation(prospect).strip().equals(prospect.name())) {
                throw new ParameterException(
                        spec.commandLine(),
                        "Nothing was erased. To do it, type his name as it is kept, \"" + prospect.name()
                                + "\", with --confirm.");
            }
            return erase(archive, prospect);
        }
    }

    private int erase(Archive archive, Prospect prospect) {
        Optional<Erased> erased = archive.erasing().erase(prospect.id());
        AuditLog.in(data.folder())
                .add(
                        System.getProperty("user.name", ""),
                        "command",
                        "rushlight erase " + mark(prospect.id()),
                        200,
                        null);
        PrintWriter out = spec.commandLine().getOut();
        erased.ifPresent(what -> {
            out.println("Erased " + prospect.name() + ": " + Numbers.of(what.logs(), "log") + ", "
                    + Numbers.of(what.statements(), "statement") + " in all, history and index included.");
            if (what.mentions() > 0) {
                out.println("His name was blacked out in " + Numbers.of(what.mentions(), "text") + " about others.");
            }
        });
        out.println(
                "Backups, exports and prints made before still hold him: erase those, too. So may the list of your own"
                        + " terms, overlay.ttl, and the files the film was imported from.");
        return 0;
    }

    // From Java 22 on there is a console without a terminal too; it reads standard input as well.
    @SuppressWarnings("SystemConsoleNull")
    private String confirmation(Prospect prospect) {
        Console console = System.console();
        if (confirmed.isPresent() || console == null) {
            return confirmed.orElse("");
        }
        String typed = console.readLine("Everything of %s goes for good. Type his name: ", prospect.name());
        return typed == null ? "" : typed;
    }

    /** What stands in the record: it tells whoever knows the id that he was erased, and nobody else who he was. */
    private static String mark(String id) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(id.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash).substring(0, SHORT);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }
}
