package rushlight.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Says what was wrong with the words typed, and where to read how it is done. */
final class WrongUse implements CommandLine.IParameterExceptionHandler {
    @Override
    public int handleParseException(ParameterException trouble, String[] args) {
        CommandLine command = trouble.getCommandLine();
        PrintWriter err = command.getErr();
        err.println(trouble.getMessage());
        CommandLine.UnmatchedArgumentException.printSuggestions(trouble, err);
        err.println("See: " + command.getCommandSpec().qualifiedName() + " --help");
        err.flush();
        return CommandLine.ExitCode.USAGE;
    }
}
