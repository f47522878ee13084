package piecewright.plan;

/**
 * Soft and hard limits of one length of time by temperature, linear between the given temperatures and constant
 * outside them.
 */
public final class Limits {
    private final double[][] rows;

    private Limits(double[][] rows) {
        this.rows = rows;
    }

    /** Of rows {temperature °C, soft hours, hard hours}, temperatures rising, at least one. */
    public static Limits of(double[]... rows) {
        if (rows.length == 0) throw new IllegalArgumentException("rows must not be empty");
        for (int i = 1; i < rows.length; i++) {
            if (!(rows[i][0] > rows[i - 1][0])) throw new IllegalArgumentException("temperatures must rise");
        }
        return new Limits(rows.clone());
    }

    public double softHours(double temperatureC) {
        return at(temperatureC, 1);
    }

    public double hardHours(double temperatureC) {
        return at(temperatureC, 2);
    }

    /** The longest hard limit at any temperature, hours. */
    public double longestHours() {
        double longest = 0;
        for (double[] row : rows) longest = Math.max(longest, row[2]);
        return longest;
    }

    private double at(double temperatureC, int column) {
        if (temperatureC <= rows[0][0]) return rows[0][column];
        for (int i = 1; i < rows.length; i++) {
            if (temperatureC <= rows[i][0]) {
                double share = (temperatureC - rows[i - 1][0]) / (rows[i][0] - rows[i - 1][0]);
                return rows[i - 1][column] + share * (rows[i][column] - rows[i - 1][column]);
            }
        }
        return rows[rows.length - 1][column];
    }
}
