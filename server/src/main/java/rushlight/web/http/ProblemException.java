package rushlight.web.http;

/** Ends a request with a problem. */
final class ProblemException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    ProblemException(Problem problem) {
        super(problem.detail());
        this.problem = problem;
    }

    Problem problem() {
        return problem;
    }
}
