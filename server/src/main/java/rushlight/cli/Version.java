package rushlight.cli;

import picocli.CommandLine.IVersionProvider;
import rushlight.knowledge.Ontology;

/** The version of the book, which is the version of the program. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        Ontology book = Ontology.packaged();
        return new String[] {
            "rushlight " + book.version(), "book " + book.fingerprint().substring(0, 12)
        };
    }
}
