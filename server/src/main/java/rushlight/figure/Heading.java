package rushlight.figure;

/**
 * What a drawing is called.
 *
 * @param id unique on the page: letters, digits and hyphens
 * @param title the name a screen reader says
 * @param description what is to be seen, in a sentence or two
 */
public record Heading(String id, String title, String description) {
    public Heading {
        if (!id.matches("[A-Za-z][A-Za-z0-9-]*")) {
            throw new IllegalArgumentException("A drawing's id is made of letters, digits and hyphens: " + id);
        }
    }
}
