package rushlight.web.http;

import java.util.Optional;
import rushlight.accounts.Role;

/**
 * Who may ask for a route, as its description says.
 *
 * @param anyone whether it answers those who are not signed in, too
 * @param role the least role it answers to; empty where the description names none, and then it answers to nobody
 * @param costly whether it takes much work, so that it may be asked for less often
 * @param recorded whether it stands in the record of what was done although it changes nothing
 */
record Rule(boolean anyone, Optional<Role> role, boolean costly, boolean recorded) {
    /** What holds for a route that nobody has given a rule. */
    static final Rule CLOSED = new Rule(false, Optional.empty(), false, true);

    /** Whether whoever asks for it is written down. */
    boolean isRecorded() {
        return recorded || role.filter(Role.EVALUATOR::equals).isPresent() || isForAdministrators();
    }

    private boolean isForAdministrators() {
        return role.filter(Role.ADMINISTRATOR::equals).isPresent();
    }
}
