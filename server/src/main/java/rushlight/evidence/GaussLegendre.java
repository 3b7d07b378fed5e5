package rushlight.evidence;

/** The sixteen points and weights of the Gauss-Legendre rule on [0, 1], found by Newton's method on the Legendre polynomial. */
final class GaussLegendre {
    static final int POINTS = 16;
    private static final double[] POINT = new double[POINTS];
    private static final double[] WEIGHT = new double[POINTS];

    static {
        for (int i = 0; i < POINTS; i++) {
            double x = Math.cos(Math.PI * (i + 0.75) / (POINTS + 0.5));
            for (int round = 0; round < 100; round++) {
                double step = legendre(x)[0] / legendre(x)[1];
                x -= step;
                if (Math.abs(step) < 1e-16) {
                    break;
                }
            }
            double slope = legendre(x)[1];
            POINT[i] = (1 - x) / 2;
            WEIGHT[i] = 1 / ((1 - x * x) * slope * slope);
        }
    }

    private GaussLegendre() {}

    static double point(int i) {
        return POINT[i];
    }

    static double weight(int i) {
        return WEIGHT[i];
    }

    /** The polynomial of degree {@link #POINTS} at x, and its slope. */
    private static double[] legendre(double x) {
        double before = 1;
        double value = x;
        for (int n = 2; n <= POINTS; n++) {
            double next = ((2 * n - 1) * x * value - (n - 1) * before) / n;
            before = value;
            value = next;
        }
        return new double[] {value, POINTS * (x * value - before) / (x * x - 1)};
    }
}
