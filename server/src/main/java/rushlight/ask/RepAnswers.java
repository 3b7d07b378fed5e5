package rushlight.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rushlight.findings.Countable;
import rushlight.index.FoundRep;
import rushlight.index.FoundReps;
import rushlight.situation.Situation;

/** Single reps, in the order of the players' ids and of the tape. */
final class RepAnswers {
    private final Countable countable;
    private final Wording wording;

    RepAnswers(Countable countable, Wording wording) {
        this.countable = countable;
        this.wording = wording;
    }

    Answers.Listed of(Scene scene) {
        SituationPair pair = scene.asked().situation().orElseGet(() -> SituationPair.just(countable.anyRep()));
        Situation chance = countable.opportunity(pair.opportunity(), pair.event());
        FoundReps found = scene.footage().found(chance, pair.event(), scene.slice());
        if (found.events() == 0) {
            return Answers.Listed.nothing(why(scene, pair, found));
        }
        int total = scene.asked()
                .filter(Filter.Top.class)
                .map(top -> Math.min(top.number(), found.events()))
                .orElse(found.events());
        int from = Math.max(0, scene.window().offset());
        List<Answer> answers = new ArrayList<>();
        for (FoundRep rep : found.events(from, Math.min(scene.window().limit(), Math.max(0, total - from)))) {
            answers.add(new Answer.Rep(SeenRep.of(rep), 1, sentence(pair)));
        }
        return new Answers.Listed(total, answers, Optional.empty());
    }

    private String sentence(SituationPair pair) {
        String said = wording.phrase(pair.both());
        return Character.toUpperCase(said.charAt(0)) + said.substring(1) + ".";
    }

    private String why(Scene scene, SituationPair pair, FoundReps found) {
        if (scene.footage().prospects().isEmpty()) {
            return "There is no film yet.";
        }
        return found.size() == 0
                ? "No rep " + wording.where(scene) + " is like that: " + wording.phrase(pair.opportunity()) + "."
                : "It never happened: " + found.size() + " times it could have, " + wording.where(scene) + ".";
    }
}
