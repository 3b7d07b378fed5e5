package rushlight.web;

import java.util.Optional;

/**
 * Who is signed in.
 *
 * @param accounts whether people have to sign in here
 * @param signedIn whether this one may look at film
 * @param name his name; empty where nobody is signed in, or nobody has to
 * @param role what he may do; empty for nobody
 * @param team whose film it is; empty where the server has one data folder
 */
public record SessionAnswer(boolean accounts, boolean signedIn, String name, Optional<String> role, String team) {}
