package rushlight.archive;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rushlight.ask.Answers;
import rushlight.ask.Asker;
import rushlight.ask.Questions;
import rushlight.ask.Suggestions;
import rushlight.film.Log;
import rushlight.film.RepFacts;
import rushlight.findings.Assessment;
import rushlight.findings.Assessor;
import rushlight.findings.FindingBook;
import rushlight.findings.OpinionsBeside;
import rushlight.findings.Peers;
import rushlight.findings.Profile;
import rushlight.handbook.Handbook;
import rushlight.index.Footage;
import rushlight.index.IndexedRep;
import rushlight.index.Page;
import rushlight.knowledge.BrokenBookException;
import rushlight.knowledge.Claim;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.PositionGroup;
import rushlight.knowledge.Taxonomy;
import rushlight.knowledge.Training;
import rushlight.notes.NoteReader;
import rushlight.plan.Planner;
import rushlight.rules.RepRules;
import rushlight.situation.LogFacts;
import rushlight.situation.RefusedShapeException;
import rushlight.situation.Situations;
import rushlight.situation.Tape;
import rushlight.situation.Tapes;
import rushlight.words.Lexicon;

/** The knowledge with everything that reads it: enough to assess a film log that nobody has stored. */
public final class Book {
    /** The file of a data folder that holds a user's own terms. */
    public static final String OVERLAY = "overlay.ttl";

    static final String REP_CLASS = "repClass";

    private final Ontology ontology;
    private final Taxonomy taxonomy;
    private final Situations situations;
    private final Assessor assessor;
    private @Nullable RepRules rules;
    private @Nullable Asker asker;
    private @Nullable OpinionsBeside opinions;
    private @Nullable Handbook handbook;
    private @Nullable Training training;
    private @Nullable Planner planner;
    private @Nullable Questions questions;
    private @Nullable Suggestions suggestions;
    private @Nullable NoteReader notes;

    private Book(Ontology ontology) {
        this.ontology = ontology;
        this.taxonomy = Taxonomy.of(ontology);
        this.situations = Situations.of(ontology, taxonomy);
        this.assessor = Assessor.of(ontology, taxonomy, situations);
    }

    /** The book as shipped. */
    public static Book packaged() {
        return new Book(Ontology.packaged());
    }

    /** The book with the terms a data folder adds, where it adds some. */
    public static Book of(Path folder) {
        Ontology ontology = ontology(folder);
        if (ontology.overlay().isEmpty()) {
            return new Book(ontology);
        }
        try {
            Book book = new Book(ontology);
            book.rules();
            book.asker();
            book.opinions();
            book.training();
            return book;
        } catch (BrokenBookException | RefusedShapeException | IllegalArgumentException e) {
            throw new BrokenBookException(OVERLAY + " cannot be used: " + e.getMessage()
                    + " \"rushlight check\" says everything to mend in it.");
        }
    }

    /** The statements of the book with those of a data folder, not yet read as terms and rules. */
    static Ontology ontology(Path folder) {
        Path overlay = folder.resolve(OVERLAY);
        return Files.exists(overlay) ? Ontology.withOverlay(overlay) : Ontology.packaged();
    }

    /** The files themselves. */
    public Ontology ontology() {
        return ontology;
    }

    /** The concepts and their relations. */
    public Taxonomy taxonomy() {
        return taxonomy;
    }

    /** The situations the book names. */
    public Situations situations() {
        return situations;
    }

    /** The rules that classify a rep; read when the first is to be classified. */
    public synchronized RepRules rules() {
        if (rules == null) {
            rules = RepRules.of(ontology, taxonomy);
        }
        return rules;
    }

    /** What holds the findings against a tape. */
    public Assessor assessor() {
        return assessor;
    }

    /** What answers a question that was read; made when the first is asked. */
    public synchronized Asker asker() {
        if (asker == null) {
            asker = Asker.of(ontology, taxonomy, situations, assessor);
        }
        return asker;
    }

    /** The book as a coach opens it; made when it is first opened. */
    public synchronized Handbook handbook() {
        if (handbook == null) {
            handbook = Handbook.of(ontology, taxonomy);
        }
        return handbook;
    }

    /** What the book knows of training; read when it is first asked for. */
    public synchronized Training training() {
        if (training == null) {
            training = Training.of(ontology);
        }
        return training;
    }

    /** What plans the weeks of practice; made when the first plan is asked for. */
    public synchronized Planner planner() {
        if (planner == null) {
            planner = Planner.of(ontology, training(), taxonomy);
        }
        return planner;
    }

    /** What reads a question; made when the first is asked. */
    public synchronized Questions questions() {
        if (questions == null) {
            questions = Questions.of(ontology, taxonomy, assessor.book());
        }
        return questions;
    }

    /** What reads notes; made when the first come. */
    public synchronized NoteReader notes() {
        if (notes == null) {
            notes = NoteReader.of(taxonomy);
        }
        return notes;
    }

    /** Lets the next notes be read with the names that a folder has now; all else has them when it is opened again. */
    void readNamesAgain(Path folder) {
        NoteReader fresh = NoteReader.of(Taxonomy.of(ontology(folder)));
        synchronized (this) {
            notes = fresh;
        }
    }

    /** What may be about to be typed; made when it is first asked for. */
    public synchronized Suggestions suggestions() {
        if (suggestions == null) {
            List<String> examples = Lexicon.named("example-questions", "question").rows().stream()
                    .map(row -> row.get(0))
                    .toList();
            suggestions = Suggestions.of(taxonomy, examples);
        }
        return suggestions;
    }

    /** Reads a question that is asked of this film, and answers it. */
    public Answers answer(Footage footage, String question, Answers.Window window) {
        return asker().answer(footage, questions().read(question, Asker.people(footage)), window);
    }

    /** What of it can be looked up: every concept, drills and findings among them. */
    public List<Page> pages() {
        return taxonomy.concepts().stream().map(Page::of).toList();
    }

    /** The facts of every reading of a log, rep classes included. */
    public LogFacts classified(Log log) {
        List<RepFacts> facts = rules().classify(log.readings(), log.charted());
        return new LogFacts(log, facts);
    }

    /** What these logs say of each prospect; where two evaluators read a rep, the one of the earlier log counts. */
    public List<Assessment> assess(List<Log> logs) {
        return tapes(logs).stream().map(this::assess).toList();
    }

    /** One tape for each prospect of these logs, in order of their ids. */
    public List<Tape> tapes(List<Log> logs) {
        return Tapes.of(logs.stream().map(this::classified).toList());
    }

    /** What one tape says. */
    public Assessment assess(Tape tape) {
        return assessor.assess(tape);
    }

    /** The men of a league, to read one man's rates beside those of the others of his position group. */
    public Peers peers(Collection<Assessment> league) {
        return new Peers(PositionGroup.byPosition(ontology), league);
    }

    /** What puts opinions beside the findings they claim; made when the first is asked for. */
    public synchronized OpinionsBeside opinions() {
        if (opinions == null) {
            opinions = new OpinionsBeside(Claim.of(ontology), taxonomy);
        }
        return opinions;
    }

    /** Where he lines up and what he opens with, by one tape and the readings on it. */
    public Profile profile(Tape tape, List<IndexedRep> reps) {
        return Profile.of(tape, reps, assessor.book());
    }

    /** The findings that tapes are held against. */
    public FindingBook findings() {
        return assessor.book();
    }
}
