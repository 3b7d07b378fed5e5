package rushlight.index;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rushlight.film.Game;

/** Everybody of whom there is film, and whose rep each document is. */
final class Owners {
    private final List<Shelf.Played> all;
    private final Map<String, Integer> byId = new HashMap<>();

    /** His place among all by document, below zero where the document does not count; and the rep's place on his tape. */
    private final int[] owner;

    private final int[] place;

    /** Every prospect's documents in the order of his tape. */
    private final int[][] documents;

    Owners(List<Shelf.Played> all, int documents) {
        this.all = all;
        this.owner = new int[documents];
        this.place = new int[documents];
        this.documents = new int[all.size()][];
        Arrays.fill(owner, -1);
        for (int i = 0; i < all.size(); i++) {
            byId.put(all.get(i).prospect().id(), i);
            int[] his = all.get(i).games().stream()
                    .flatMap(game -> game.documents().stream())
                    .mapToInt(document -> document)
                    .toArray();
            for (int rep = 0; rep < his.length; rep++) {
                owner[his[rep]] = i;
                place[his[rep]] = rep;
            }
            this.documents[i] = his;
        }
    }

    List<Shelf.Played> all() {
        return all;
    }

    Optional<Shelf.Played> of(String prospect) {
        return Optional.ofNullable(byId.get(prospect)).map(all::get);
    }

    /** Whose rep a document is; below zero where it does not count. */
    int of(int document) {
        return owner[document];
    }

    /** A key by which reps stand in the order of the prospects' ids, each one's in the order of his tape. */
    long key(int document) {
        return (long) owner[document] << Integer.SIZE | place[document];
    }

    int document(long key) {
        return documents[(int) (key >>> Integer.SIZE)][(int) key];
    }

    Shelf.Played played(long key) {
        return all.get((int) (key >>> Integer.SIZE));
    }

    Game game(long key) {
        int left = (int) key;
        for (Shelf.PlayedGame game : played(key).games()) {
            if (left < game.documents().size()) {
                return game.game();
            }
            left -= game.documents().size();
        }
        throw new IllegalArgumentException("There is no rep " + key + " on any tape.");
    }
}
