package rushlight.film.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(ReplaceUnderscores.class)
class ManyFaultsTest {
    private final SpoiltLog log = SpoiltLog.seeded(20251125L);
    private final ReadResult.Rejected result = (ReadResult.Rejected) SmallLog.read(log.text());

    @Test
    void two_hundred_slips_in_ten_thousand_rows_are_two_hundred_located_messages() {
        List<String> expected = new ArrayList<>();
        log.spoilt().forEach((line, slip) -> expected.add(line + " " + slip.column() + " " + slip.code()));

        assertThat(result.faults())
                .hasSize(SpoiltLog.FAULTS)
                .extracting(fault -> fault.line() + " " + fault.column() + " " + fault.code())
                .containsExactlyElementsOf(expected);
        assertThat(result.faults())
                .allSatisfy(fault -> assertThat(fault.text())
                        .startsWith("Line " + fault.line() + ", " + fault.column() + ": ")
                        .endsWith(fault.text().endsWith("?") ? "?" : "."));
    }

    @Test
    void they_are_of_twenty_kinds_ten_of_each() {
        assertThat(result.faults().stream().collect(Collectors.groupingBy(Fault::code, Collectors.counting())))
                .hasSize(SpoiltLog.SLIPS.size())
                .allSatisfy((code, count) -> assertThat(count).isEqualTo(SpoiltLog.FAULTS / SpoiltLog.SLIPS.size()));
    }

    @Test
    void the_other_rows_are_good_and_the_two_hundred_can_be_given_back() {
        assertThat(result.good())
                .singleElement()
                .satisfies(log -> assertThat(log.readings()).hasSize(SpoiltLog.ROWS - SpoiltLog.FAULTS));
        assertThat(result.badRows().rows())
                .extracting(BadRows.BadRow::line)
                .containsExactlyElementsOf(log.spoilt().keySet());
    }
}
