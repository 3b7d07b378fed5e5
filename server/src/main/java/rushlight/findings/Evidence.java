package rushlight.findings;

import java.util.List;
import rushlight.situation.Sighting;
import rushlight.situation.Tape;

/** The reps behind a count. They are looked up only when someone asks. */
public final class Evidence {
    private final Tape tape;
    private final Sample sample;

    Evidence(Tape tape, Sample sample) {
        this.tape = tape;
        this.sample = sample;
    }

    /**
     * One rep behind a count.
     *
     * @param sighting where it is found
     * @param event whether it happened, or could have
     */
    public record Rep(Sighting sighting, boolean event) {}

    /** The opportunities in the order of the tape. */
    public List<Rep> reps() {
        return sample.opportunities().stream()
                .mapToObj(rep -> new Rep(tape.sighting(rep), sample.events().get(rep)))
                .toList();
    }

    Sample sample() {
        return sample;
    }
}
