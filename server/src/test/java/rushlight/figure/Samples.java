package rushlight.figure;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rushlight.figure.Front.Man;
import rushlight.figure.Front.Mark;
import rushlight.figure.Front.Spot;
import rushlight.figure.Ladder.Need;
import rushlight.figure.Ladder.Rung;

/** Drawings to look at and to measure. */
final class Samples {
    static final List<Man> LINE = List.of(
            new Man("T", -8, 0, Mark.CIRCLE, true),
            new Man("G", -4, 0, Mark.CIRCLE, true),
            new Man("C", 0, 0, Mark.SQUARE, true),
            new Man("G", 4, 0, Mark.CIRCLE, true),
            new Man("T", 8, 0, Mark.CIRCLE, true),
            new Man("TE", 12, 0, Mark.CIRCLE, false));

    private Samples() {}

    static List<Drawing> all() {
        return List.of(front(), counts(), ladder(), relations(), flow(), interval(), games());
    }

    static Drawing front() {
        return new Front(
                        new Heading(
                                "front",
                                "Where the 5-technique lines up",
                                "The line from behind; one mark outside the right tackle."),
                        LINE,
                        List.of(new Spot("5-technique", "outside shade of the tackle", 9, OptionalInt.empty(), true)))
                .draw();
    }

    static Drawing counts() {
        return new Front(
                        new Heading(
                                "counts", "Where he lined up", "Bars by spot, most reps outside the end on the right."),
                        List.of(
                                new Man("TE", -12, 0, Mark.CIRCLE, true),
                                LINE.get(0),
                                LINE.get(1),
                                LINE.get(2),
                                LINE.get(3),
                                LINE.get(4),
                                new Man("TE", 12, 0, Mark.CIRCLE, true)),
                        List.of(
                                spot("9", "outside the end", 13, 118),
                                spot("6", "over the end", 12, 40),
                                spot("7", "inside the end", 11, 31),
                                spot("5", "outside the tackle", 9, 77),
                                spot("4", "over the tackle", 8, 12),
                                spot("5", "outside the tackle, left", -9, 22),
                                spot("9", "outside the end, left", -13, 64)))
                .draw();
    }

    private static Spot spot(String label, String words, double at, int count) {
        return new Spot(label, words, at, OptionalInt.of(count), true);
    }

    static Drawing ladder() {
        return new Ladder(
                        new Heading("ladder", "What the long arm needs", "Five steps, the first at the foot."),
                        "long arm",
                        List.of(
                                new Rung("stance balance", Need.MUST),
                                new Rung("get-off", Need.MUST),
                                new Rung("hand strike with the thumb up and the elbow in, from any stance", Need.MUST),
                                new Rung("bull rush", Need.ONE_OF),
                                new Rung("grip strength", Need.HELPS)))
                .draw();
    }

    static Drawing relations() {
        return new Relations(
                        new Heading(
                                "relations", "What goes with the long arm", "It beats two things; two things stop it."),
                        "long arm",
                        List.of("soft punch", "high pads of a blocker who sits back on his heels"),
                        List.of(
                                new Relations.Stop(
                                        "the blocker knocks the arm down", List.of("arm over", "rip and bend")),
                                new Relations.Stop("anchors against power", List.of("push-pull"))),
                        new Relations.Words("Wins against", "Stopped by", "Then"))
                .draw();
    }

    static Drawing flow() {
        return new Flow(
                        new Heading("flow", "How his rushes went on", "Most go from the long arm to an anchor."),
                        List.of("He opens", "Answer", "He goes on", "Ends"),
                        List.of(
                                new Flow.Stream(List.of("long arm", "anchors", "push-pull", "won"), 14),
                                new Flow.Stream(List.of("long arm", "anchors", "nothing more", "lost"), 22),
                                new Flow.Stream(List.of("long arm", "knocks the arm down", "arm over", "won"), 6),
                                new Flow.Stream(List.of("speed rush", "over-set", "nothing more", "lost"), 9),
                                new Flow.Stream(List.of("speed rush", "no answer seen", "nothing more", "won"), 11)))
                .draw();
    }

    static Drawing interval() {
        return new Interval(
                        new Heading(
                                "interval", "Kick-outs taken under the block", "16 of 18, likely 73 to 97 percent."),
                        16,
                        18,
                        0.73,
                        0.97,
                        OptionalDouble.of(0.33))
                .draw();
    }

    static Drawing games() {
        return new Games(
                        new Heading("games", "Used no counter, game by game", "Falls from 5 of 6 to 1 of 5."),
                        List.of(
                                new Games.Played("at Gannet Rock", 5, 6, 0.55, 0.97),
                                new Games.Played("v Lark Hollow", 3, 4, 0.38, 0.94),
                                new Games.Played(
                                        "a game with a name that is much too long to stand beside it", 0, 0, 0, 1),
                                new Games.Played("v Stonefen", 1, 5, 0.05, 0.58)),
                        OptionalDouble.of(0.7),
                        OptionalInt.of(2))
                .draw();
    }
}
