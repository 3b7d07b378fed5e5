package rushlight.cli;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import rushlight.knowledge.Taxonomy;

/** Whose numbers a front is called by. */
final class NumberingOption {
    @Option(names = "--numbering", paramLabel = "SYSTEM", description = "whose number it is: A, B, C or D")
    private Optional<String> numbering = Optional.empty();

    /** The letter of the system, where one was named. */
    Optional<String> system(Taxonomy taxonomy, CommandLine command) {
        Set<String> systems = taxonomy.numbering().systems();
        Optional<String> named = numbering.map(name -> name.toUpperCase(Locale.ROOT));
        if (named.isPresent() && !systems.contains(named.get())) {
            throw new ParameterException(
                    command,
                    "There is no numbering \"" + numbering.get() + "\"; write one of " + String.join(", ", systems)
                            + ".");
        }
        return named;
    }
}
