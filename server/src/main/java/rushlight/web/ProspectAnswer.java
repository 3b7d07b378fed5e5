package rushlight.web;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rushlight.film.Game;
import rushlight.film.Prospect;
import rushlight.findings.Flow;
import rushlight.findings.Profile;
import rushlight.situation.Narrowing;

/**
 * Who a prospect is, where he lines up, what he opens with and what follows what. The filter narrows everything but
 * {@code games}, {@code opponents}, {@code sides} and {@code logs}.
 */
public record ProspectAnswer(
        String id,
        String name,
        String position,
        String team,
        String classYear,
        OptionalDouble heightCm,
        OptionalDouble weightKg,
        OptionalDouble armCm,
        String notes,
        int reps,
        int allReps,
        Narrowing filter,
        List<Played> games,
        List<String> opponents,
        List<String> sides,
        List<LogBrief> logs,
        List<Phase> phases,
        List<Spot> spots,
        List<Move> moves,
        Following flow) {
    /** A game with the reps he has in it. */
    public record Played(String id, String name, Optional<String> date, String opponent, String level, int reps) {
        /** A game of his. */
        public static Played of(Game game, int reps) {
            return new Played(
                    game.id(), game.name(), game.date().map(Object::toString), game.opponent(), game.level(), reps);
        }
    }

    /** Reps of one phase. */
    public record Phase(String phase, int reps) {}

    /** An alignment over one side of the offense, null where nobody said which. */
    public record Spot(String alignment, Optional<String> over, int reps, int won, int lost) {}

    /** An opening move with its part of all of them. */
    public record Move(String move, int reps, double share, int won, int lost) {}

    /** What followed what. */
    public record Following(int reps, List<Link> links) {}

    /** How often one thing led to the next. */
    public record Link(Point from, Point to, int reps) {}

    /** Something at a stage: 0 his move, 1 the answer, 2 his next move, 3 the result; null where nothing was tagged. */
    public record Point(int stage, Optional<String> value) {}

    /** What stands beside the counts, of the whole tape. */
    public record Whole(
            int reps, List<Played> games, List<String> opponents, List<String> sides, List<LogBrief> logs) {}

    /** The answer for one prospect. */
    public static ProspectAnswer of(Prospect prospect, Whole whole, Narrowing filter, Profile profile) {
        return new ProspectAnswer(
                prospect.id(),
                prospect.name(),
                prospect.position(),
                prospect.team(),
                prospect.classYear(),
                prospect.heightCm(),
                prospect.weightKg(),
                prospect.armCm(),
                prospect.notes(),
                profile.reps(),
                whole.reps(),
                filter,
                whole.games(),
                whole.opponents(),
                whole.sides(),
                whole.logs(),
                profile.phases().entrySet().stream()
                        .map(e -> new Phase(e.getKey(), e.getValue()))
                        .toList(),
                profile.spots().stream().map(ProspectAnswer::spot).toList(),
                profile.moves().stream().map(ProspectAnswer::move).toList(),
                new Following(
                        profile.flow().reps(),
                        profile.flow().links().stream()
                                .map(ProspectAnswer::link)
                                .toList()));
    }

    private static Spot spot(Profile.Spot spot) {
        Profile.Ended ended = spot.ended();
        return new Spot(spot.alignment(), spot.over(), ended.reps(), ended.won(), ended.lost());
    }

    private static Move move(Profile.Move move) {
        Profile.Ended ended = move.ended();
        return new Move(move.move(), ended.reps(), move.share(), ended.won(), ended.lost());
    }

    private static Link link(Flow.Link link) {
        return new Link(point(link.from()), point(link.to()), link.reps());
    }

    private static Point point(Flow.Point point) {
        return new Point(point.stage().place(), point.value());
    }
}
