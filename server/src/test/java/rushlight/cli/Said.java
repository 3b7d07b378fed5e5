package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;

/** What the program said to somebody who typed something. */
record Said(int code, String out, String err) {
    /** Types these words after the program's name. */
    static Said to(String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
        return new Said(code, out.toString(), err.toString());
    }

    /** What it had to complain of, without what it was doing meanwhile. */
    List<String> complaints() {
        return err.lines().filter(line -> !line.startsWith("Reading ")).toList();
    }

    /** Speaks to a person: of no class, package or stack. */
    Said isPolite() {
        assertThat(out + err)
                .doesNotContain("Exception")
                .doesNotContainPattern("rushlight\\.[a-z]+\\.[A-Z]")
                .doesNotContain("java.")
                .doesNotContain("\tat ");
        return this;
    }
}
