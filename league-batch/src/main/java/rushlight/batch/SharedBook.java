package rushlight.batch;

import rushlight.archive.Book;

/** The book, read once on each machine. */
final class SharedBook {
    private static final Book BOOK = Book.packaged();

    private SharedBook() {}

    static Book book() {
        return BOOK;
    }
}
