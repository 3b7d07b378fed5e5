package rushlight.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Situation;
import rushlight.words.Label;

/** Reads what a question says of the reps, with what it denies and what something else comes off. */
final class Conditions {
    private static final String MOVE = "move";
    private static final String OPENING_MOVE = "openingMove";
    private static final String REPS = Find.REPS.slug();
    private static final String ON = "on:";
    private static final String MET = "met:";
    private static final String WON = "outcome=won";
    private static final String LOST = "outcome=lost";

    private final Taxonomy taxonomy;
    private final Places places;

    Conditions(Taxonomy taxonomy, Places places) {
        this.taxonomy = taxonomy;
        this.places = places;
    }

    List<Condition> of(List<Part> parts) {
        List<Condition> found = new ArrayList<>();
        boolean deny = false;
        boolean denied = false;
        boolean opening = false;
        boolean faced = false;
        boolean or = false;
        boolean and = false;
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            if (part.does(Act.NOT)) {
                deny = true;
            } else if (part.does(Act.STOP) || part.does(Act.WHO) || part.does(Act.VERDICT)) {
                deny = false;
                denied = false;
            } else if (part.does(Act.OR)) {
                deny = denied;
            }
            or |= part.does(Act.OR);
            and |= part.does(Act.AND);
            opening |= part.does(Act.OPENING);
            faced |= part.does(Act.FACED);
            List<Condition> here = here(parts, i, deny, opening, faced);
            if (!here.isEmpty()) {
                denied = deny;
                if (!found.isEmpty() && here.size() == 1) {
                    Condition before = found.get(found.size() - 1);
                    boolean either = or || (and && isOne(before, here.get(0)));
                    found.add(either ? here.get(0).orElse() : here.get(0));
                } else {
                    found.addAll(here);
                }
                or = false;
                and = false;
                deny = false;
                opening = false;
                faced = false;
            }
        }
        return List.copyOf(found);
    }

    /** Two values of which a rep has one: "left and right tackles", "sacks and hurries". */
    private static boolean isOne(Condition before, Condition here) {
        return before.role() == here.role() && !here.isAct() && here.role() != Chip.Role.FAULT && !here.denied();
    }

    private List<Condition> here(List<Part> parts, int i, boolean deny, boolean opening, boolean faced) {
        Part part = parts.get(i);
        Optional<String> is = part.value(Act.IS);
        if (is.isPresent()) {
            return said(part, beatenByHim(parts, i) ? is.get().replace(LOST, WON) : is.get(), deny);
        }
        List<Label> labels = isActOfHis(parts, i)
                ? List.of(new Label(part.value(Act.ELSE).orElseThrow(), Label.Kind.PREFERRED))
                : part.terms();
        List<Places.Place> ranked = places.ranked(labels);
        Optional<Places.Place> chosen = ranked.stream()
                .filter(place -> faced && place.role() == Chip.Role.FACED)
                .findFirst()
                .or(() -> ranked.stream().findFirst());
        return chosen.map(place -> List.of(new Condition(
                        part,
                        place.role(),
                        place.event(),
                        part.does(Act.LATER) && !deny ? later(place.situation()) : place.situation(),
                        place.kind(),
                        Optional.of(place.slug()),
                        deny,
                        opening,
                        false)))
                .orElse(List.of());
    }

    /** A counter comes after the first move. */
    private static Situation later(Situation situation) {
        return situation instanceof Situation.Has has && has.facet().equals(MOVE)
                ? Situation.all(List.of(situation, Situation.not(Situation.has(OPENING_MOVE, has.value()))))
                : situation;
    }

    /** Words that ask for something, unless somebody is said to do it. */
    static boolean isActOfHis(List<Part> parts, int i) {
        return parts.get(i).does(Act.ELSE)
                && parts.subList(0, i).stream()
                        .anyMatch(part -> part.does(Act.WHO)
                                || part.value(Act.PERHAPS).filter(REPS::equals).isPresent()
                                || part.value(Act.FIND).filter(REPS::equals).isPresent()
                                || !part.names(Sense.Name.Kind.PROSPECT).isEmpty());
    }

    private List<Condition> said(Part part, String value, boolean deny) {
        List<Condition> found = new ArrayList<>();
        String[] words = value.split(" ", -1);
        boolean event = words[0].equals("event");
        Optional<Situation> kind = Stream.of(words)
                .filter(word -> word.startsWith(ON))
                .map(word -> places.condition(word.substring(ON.length())))
                .findFirst();
        for (int w = 1; w < words.length; w++) {
            if (!words[w].startsWith(ON)) {
                boolean met = words[w].startsWith(MET);
                Situation situation = places.condition(met ? words[w].substring(MET.length()) : words[w]);
                boolean came = event && !met;
                Chip.Role role = came ? Chip.Role.RESULT : Chip.Role.CONTEXT;
                found.add(new Condition(part, role, came, situation, kind, Optional.empty(), deny, false, false));
            }
        }
        return found;
    }

    /** "Beaten by" something he did: then it is the other man who was beaten. */
    private boolean beatenByHim(List<Part> parts, int i) {
        boolean by = i + 2 < parts.size() && parts.get(i + 1).does(Act.FACED);
        Optional<Part> next = parts.stream().skip(i + 1L).filter(Part::isTerm).findFirst();
        return by
                && next.isPresent()
                && places.ranked(next.get().terms()).stream()
                        .findFirst()
                        .filter(p -> p.role() == Chip.Role.DID)
                        .isPresent();
    }

    /** The same, a move that something else came off being what he met. */
    List<Condition> afterOpening(List<Condition> conditions) {
        boolean several = conditions.stream().filter(Condition::event).count() > 1;
        return conditions.stream()
                .map(c -> several && c.isAct() && c.opening() ? opened(c).asCircumstance() : c)
                .toList();
    }

    /** The same, where all of them are what a claim about him is narrowed to. */
    List<Condition> met(List<Condition> conditions) {
        return conditions.stream()
                .map(c -> c.isAct() && c.opening() ? opened(c).asCircumstance() : c)
                .toList();
    }

    /** A move that something else came off is the one he opened with. */
    Condition opened(Condition condition) {
        if (condition.situation() instanceof Situation.Has has && has.facet().equals(MOVE)) {
            return condition.with(Situation.has(OPENING_MOVE, has.value()));
        }
        return condition;
    }

    /** Whether all that is said is that he does one thing or another. */
    static boolean isEither(List<Condition> conditions) {
        List<Condition> acts = conditions.stream().filter(Condition::event).toList();
        return acts.size() == 2 && acts.get(1).either() && acts.stream().allMatch(c -> c.isAct() && !c.denied());
    }

    /** Whether it is a move that he used, so that there is a won and a lost of it. */
    static boolean isMove(Condition condition) {
        return condition.isAct() && condition.situation().reads().containsKey(MOVE);
    }

    /** Whether the term is the other one or narrower. */
    boolean isA(Condition condition, String slug) {
        return condition.slug().filter(own -> taxonomy.isA(own, slug)).isPresent();
    }
}
