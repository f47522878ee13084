package piecewright.colour;

/**
 * A colour as CIE XYZ under D65, the light itself being 0.950, 1, 1.089.
 *
 * @param xRatio X over the light's Y
 * @param yRatio luminance over the light's, [0, 1]
 * @param zRatio Z over the light's Y
 */
public record Tristimulus(double xRatio, double yRatio, double zRatio) {
    /** Lightness L* of CIE 1976, 0 to 100. */
    public double lightnessPercent() {
        double epsilon = 216.0 / 24389;
        return yRatio > epsilon ? 116 * Math.cbrt(yRatio) - 16 : yRatio * 24389 / 27;
    }
}
