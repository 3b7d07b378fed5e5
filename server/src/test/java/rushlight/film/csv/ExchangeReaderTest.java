package rushlight.film.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rushlight.film.Step;

@DisplayNameGeneration(ReplaceUnderscores.class)
class ExchangeReaderTest {
    static Stream<Arguments> faults() {
        return Stream.of(
                Arguments.of(
                        "run through",
                        "\"run through\" has more than one meaning here; write run-through or run-through-puller."),
                Arguments.of("bull-rush >", "step 2 is empty; write one step on each side of a >."),
                Arguments.of(
                        "bull-rush > [anchor-hop",
                        "the brackets of \"[anchor-hop\" do not close one step; write [step] > next step."),
                Arguments.of(
                        "[anchor-hop] [over-set]",
                        "the brackets of \"[anchor-hop] [over-set]\" do not close one step;"
                                + " write [step] > next step."),
                Arguments.of("[ ]", "there is no step between the brackets."),
                Arguments.of("@inside", "\"@inside\" names a hand and no step."),
                Arguments.of(
                        "bull-rush@insde",
                        "there is no hand \"insde\"; write inside, outside, left or right after the @."),
                Arguments.of(
                        "[anchor-hop@inside]",
                        "only his own steps name a hand; take the @ off \"[anchor-hop@inside]\"."),
                Arguments.of(
                        "[anchor-hop]@inside",
                        "only his own steps name a hand; take the @ off \"[anchor-hop]@inside\"."),
                Arguments.of("anchor-hop > bull-rush", "\"anchor-hop\" is the blocker's; write [anchor-hop]."),
                Arguments.of("[wrong arm]", "\"wrong arm\" is his own; write it without brackets."),
                Arguments.of("bul rush", "there is no \"bul rush\"; did you mean bull rush, hug rush or go rush?"));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void says_what_is_wrong_with_a_step(String exchange, String message) {
        assertThat(SmallLog.faults(SmallLog.row("exchange", exchange).read()))
                .containsExactly("Line 2, exchange: " + message);
    }

    @Test
    void tells_his_steps_from_the_blockers_and_names_his_hand() {
        assertThat(steps("Long Arm@Outside > [over set] > arm-over @inside>flatten"))
                .containsExactly(
                        new Step(Step.By.HIM, "long-arm", Optional.of("outside")),
                        new Step(Step.By.BLOCKER, "over-set", Optional.empty()),
                        new Step(Step.By.HIM, "arm-over", Optional.of("inside")),
                        new Step(Step.By.HIM, "flatten", Optional.empty()));
    }

    @Test
    void lets_the_blocker_begin() {
        assertThat(steps("[pull-and-kick-block] > wrong-arm"))
                .extracting(Step::by)
                .containsExactly(Step.By.BLOCKER, Step.By.HIM);
    }

    @Test
    void a_slug_settles_what_a_label_leaves_open() {
        assertThat(steps("run-through")).extracting(Step::concept).containsExactly("run-through");
    }

    @Test
    void tells_every_step_that_is_wrong() {
        assertThat(SmallLog.faults(SmallLog.row("exchange", "bul rush > [ancor hop] > push-pull@up")
                        .read()))
                .hasSize(3);
    }

    private static List<Step> steps(String exchange) {
        ReadResult result = SmallLog.row("exchange", exchange).read();
        assertThat(SmallLog.faults(result)).isEmpty();
        return ((ReadResult.Accepted) result).logs().get(0).readings().get(0).exchange();
    }
}
