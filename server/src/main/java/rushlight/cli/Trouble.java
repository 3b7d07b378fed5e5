package rushlight.cli;

import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;
import rushlight.accounts.AccountsException;
import rushlight.archive.FolderException;
import rushlight.archive.IndexBehindException;
import rushlight.knowledge.BrokenBookException;
import rushlight.store.FullDiskException;
import rushlight.store.RemoteStoreException;

/** Turns what broke into a sentence; a person never sees a stack trace. */
final class Trouble implements CommandLine.IExecutionExceptionHandler {
    static final int BROKE = 3;
    private static final Logger LOG = LoggerFactory.getLogger(Trouble.class);

    @Override
    public int handleExecutionException(Exception trouble, CommandLine command, ParseResult parsed) {
        command.getErr().println(sentence(trouble));
        command.getErr().flush();
        LOG.debug("A command broke", trouble);
        return BROKE;
    }

    private static String sentence(Exception trouble) {
        if (trouble instanceof FolderException
                || trouble instanceof AccountsException
                || trouble instanceof BrokenBookException
                || trouble instanceof FullDiskException
                || trouble instanceof RemoteStoreException
                || trouble instanceof IndexBehindException) {
            return String.valueOf(trouble.getMessage());
        }
        if (FullDiskException.isBehind(trouble)) {
            return "The disk is full" + (trouble instanceof UncheckedIOException ? ": " + trouble.getMessage() : "")
                    + ". Nothing was half written. Make room and do it again.";
        }
        if (trouble instanceof UncheckedIOException io) {
            return file(io);
        }
        return "Something broke inside Rushlight (" + said(trouble)
                + "). Nothing was half stored. Run again with JAVA_TOOL_OPTIONS="
                + "-Dorg.slf4j.simpleLogger.defaultLogLevel=debug to see where, and please report it.";
    }

    private static String file(UncheckedIOException io) {
        if (io.getCause() instanceof NoSuchFileException missing) {
            return "There is no file " + missing.getFile() + ".";
        }
        if (io.getCause() instanceof AccessDeniedException denied) {
            return "The file " + denied.getFile() + " may not be read or written by you. Check its permissions.";
        }
        if (io.getCause() instanceof FileSystemException file && file.getReason() != null) {
            return "The file " + file.getFile() + " cannot be read or written: " + file.getReason() + ".";
        }
        return "Reading or writing failed: " + io.getMessage() + " (" + said(io.getCause()) + ").";
    }

    private static String said(@Nullable Throwable trouble) {
        String message = trouble == null ? null : trouble.getMessage();
        return message == null || message.isBlank()
                ? "it did not say why"
                : message.lines().findFirst().orElse("");
    }
}
