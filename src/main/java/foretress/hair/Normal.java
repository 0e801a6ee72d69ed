package foretress.hair;

/** The normal distribution's cumulative function: Abramowitz and Stegun 26.2.17, absolute error below 7.5e-8. */
final class Normal {
    private static final double[] B = { 0.319381530, -0.356563782, 1.781477937, -1.821255978, 1.330274429 };

    private Normal() {}

    static double below(double z) {
        if (z < 0) {
            return 1 - below(-z);
        }
        double t = 1 / (1 + 0.2316419 * z);
        double sum = 0;
        for (int i = B.length - 1; i >= 0; i--) {
            sum = (sum + B[i]) * t;
        }
        return 1 - Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) * sum;
    }
}
