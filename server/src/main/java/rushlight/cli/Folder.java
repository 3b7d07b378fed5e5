package rushlight.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the name of a folder, which need not be there yet; what is there must be no file. */
final class Folder implements ITypeConverter<Path> {
    /** Something of that name is there, and it is a file. */
    static final class IsFile extends TypeConversionException {
        private static final long serialVersionUID = 1L;

        IsFile(Path file) {
            super(file + " is a file, not a folder.");
        }
    }

    @Override
    public Path convert(String name) {
        Path folder = Path.of(name);
        if (Files.isRegularFile(folder)) {
            throw new IsFile(folder);
        }
        return folder;
    }
}
