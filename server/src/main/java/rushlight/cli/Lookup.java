package rushlight.cli;

import java.io.PrintWriter;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import rushlight.archive.Book;
import rushlight.handbook.Handbook;
import rushlight.handbook.NumberAnswer;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Lesson;
import rushlight.knowledge.Lessons;
import rushlight.knowledge.Relations;
import rushlight.knowledge.Taxonomy;
import rushlight.words.FrontNumbers;
import rushlight.words.Meaning;
import rushlight.words.Vocabulary;

/** Finds the concept a person names; where the words name none or several, it says what may have been meant. */
final class Lookup {
    private static final int OFFERED = 3;

    private final Book book;
    private final PrintWriter err;

    Lookup(Book book, PrintWriter err) {
        this.book = book;
        this.err = err;
    }

    /** Among all concepts of the book. */
    Optional<String> anything(String text) {
        Vocabulary vocabulary = Vocabulary.of(book.taxonomy());
        return one(text, vocabulary.meaning(text), vocabulary, "nothing");
    }

    /**
     * Among some concepts. Where a text names none of them, the text with the word for their kind behind it is tried: a
     * name without the word that all of its kind bear will do.
     *
     * @param none what the book has not, as in {@code no move}
     */
    Optional<String> among(String text, Collection<Concept> concepts, String none) {
        Vocabulary vocabulary = Vocabulary.of(concepts);
        Meaning meaning = vocabulary.meaning(text);
        if (meaning instanceof Meaning.None) {
            meaning = withKind(text, concepts, vocabulary);
        }
        return one(text, meaning, vocabulary, none);
    }

    /** Where a text names nothing as a whole, some words of a long name will do that no other name has. */
    private Optional<String> one(String text, Meaning whole, Vocabulary vocabulary, String none) {
        Meaning meaning = whole instanceof Meaning.None ? vocabulary.partly(text, book.taxonomy()) : whole;
        if (meaning instanceof Meaning.One one) {
            return Optional.of(one.slug());
        }
        if (meaning instanceof Meaning.Several several) {
            ask(text, several.slugs(), vocabulary);
        } else {
            err.println("The book has " + none + " called \"" + text + "\". Nearest: "
                    + String.join(", ", vocabulary.nearest(text, OFFERED)) + ".");
        }
        return Optional.empty();
    }

    /** An alignment by its name, or by its number where every system means the same spot by it. */
    Optional<String> alignment(String text, Optional<String> system) {
        Taxonomy taxonomy = book.taxonomy();
        List<Concept> alignments = taxonomy.ofClass("Alignment");
        Optional<String> number = FrontNumbers.of(taxonomy).in(text);
        boolean named = system.isEmpty() && Vocabulary.of(alignments).meaning(text) instanceof Meaning.One;
        if (number.isEmpty() || named) {
            return among(text, alignments, "no alignment");
        }
        Optional<NumberAnswer> meant = number(number.get(), system);
        Optional<String> only = meant.filter(m -> !m.ambiguous() || system.isPresent())
                .flatMap(m -> m.meanings().stream()
                        .flatMap(meaning -> meaning.alignments().stream())
                        .findFirst());
        if (only.isEmpty()) {
            meant.ifPresent(m -> err.print(new NumberText(taxonomy).of(m)));
        }
        return only;
    }

    /** What a number means; empty, and told, where the named system lacks it. */
    Optional<NumberAnswer> number(String number, Optional<String> system) {
        Optional<NumberAnswer> answer = book.handbook().number(number, system);
        if (answer.isEmpty()) {
            String name = system.orElse("");
            err.println("Numbering " + name + " has no " + number + ". It has "
                    + String.join(", ", book.taxonomy().numbering().numbers(name)) + ".");
        }
        return answer;
    }

    private Meaning withKind(String text, Collection<Concept> concepts, Vocabulary vocabulary) {
        Relations relations = new Relations(book.ontology());
        return concepts.stream()
                .flatMap(concept -> concept.classes().stream())
                .distinct()
                .sorted()
                .map(name -> vocabulary.meaning(text + " " + relations.kind(name)))
                .filter(meaning -> !(meaning instanceof Meaning.None))
                .findFirst()
                .orElse(new Meaning.None());
    }

    private void ask(String text, List<String> slugs, Vocabulary vocabulary) {
        Taxonomy taxonomy = book.taxonomy();
        Handbook handbook = book.handbook();
        Page page = new Page();
        page.line("\"" + text + "\" can mean " + Numbers.of(slugs.size(), "thing") + ". Say which:");
        for (String slug : slugs) {
            Concept concept = taxonomy.concept(slug).orElseThrow();
            String kinds = String.join(" and ", handbook.kinds(concept));
            page.line("  " + vocabulary.typed(concept) + " (" + kinds + ")");
            List<Lesson.Statement> told = handbook.lessons().about(slug, Lessons.HOW_TO_TELL);
            String difference =
                    told.isEmpty() ? concept.definition() : told.get(0).text();
            page.wrapped("      ", "      ", difference);
        }
        err.print(page);
    }
}
