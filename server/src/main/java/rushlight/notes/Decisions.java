package rushlight.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a person decided on proposed reps.
 *
 * @param accepted the keys of the tags that hold; every other stays out
 * @param phases the phase of a rep by its ordinal, where it was chosen
 */
public record Decisions(Set<String> accepted, Map<Integer, String> phases) {
    public Decisions {
        accepted = Set.copyOf(accepted);
        phases = Map.copyOf(phases);
    }

    /** The notes with the tags that hold; a rep of which none does is left out, the others keep their ordinals. */
    public Notes of(Notes notes) {
        List<List<String>> keys = TagKeys.ofReps(notes);
        List<ProposedRep> kept = new ArrayList<>();
        for (int i = 0; i < notes.reps().size(); i++) {
            ProposedRep rep = rep(notes.reps().get(i), keys.get(i));
            if (!rep.tags().isEmpty()) {
                kept.add(rep);
            }
        }
        return new Notes(
                notes.source(), notes.diagnostics(), notes.segments(), kept, notes.statements(), notes.hidden());
    }

    private ProposedRep rep(ProposedRep rep, List<String> keys) {
        List<Mention> tags = new ArrayList<>();
        for (int i = 0; i < keys.size(); i++) {
            if (accepted.contains(keys.get(i))) {
                tags.add(rep.tags().get(i));
            }
        }
        Optional<String> phase = Optional.ofNullable(phases.get(rep.ordinal())).or(rep::phase);
        return new ProposedRep(rep.ordinal(), phase, rep.start(), rep.end(), rep.from(), rep.to(), rep.replays(), tags);
    }
}
