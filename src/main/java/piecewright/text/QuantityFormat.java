package piecewright.text;

import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.Duration;
import java.util.Objects;
import piecewright.quantity.Moisture;
import piecewright.quantity.Units;

/** Writes quantities in a person's units and decimal sign, each so that {@link QuantityParser} reads it back. */
public final class QuantityFormat {
    private final DisplayUnits units;

    public QuantityFormat(DisplayUnits units) {
        this.units = Objects.requireNonNull(units);
    }

    /** A weight to the gram or the tenth of an ounce: "5.560 kg", "560 g", "12 lb 4.1 oz". */
    public String mass(double massKg) {
        if (metric()) return massKg < 0.9995 ? figure(massKg * 1000, 0) + " g" : fixed(massKg, 3) + " kg";
        long tenths = Math.round(massKg / Units.KG_PER_OUNCE * 10);
        if (tenths < 160) return figure(tenths / 10.0, 1) + " oz";
        return figure(tenths / 160, 0) + " lb " + figure(tenths % 160 / 10.0, 1) + " oz";
    }

    /** A weight as the kitchen scale shows it: "5560 g", "12 lb 4.1 oz". */
    public String scaleMass(double massKg) {
        return metric() ? figure(massKg * 1000, 0) + " g" : mass(massKg);
    }

    /** A weight in round figures, for talk rather than the scale: "5.1 kg", "11.2 lb". */
    public String roughMass(double massKg) {
        return metric() ? figure(massKg, 1) + " kg" : figure(massKg / Units.KG_PER_POUND, 1) + " lb";
    }

    /** A size that something is sold in, no figure more than it needs: "25 kg", "2.27 kg", "50 lb". */
    public String sack(double massKg) {
        double pounds = massKg / Units.KG_PER_POUND;
        if (metric()) return figure(massKg, 3) + " kg";
        return Math.abs(pounds - Math.rint(pounds)) < 0.005 ? figure(pounds, 0) + " lb" : mass(massKg);
    }

    /** An amount to ask for in a shop, rounded up to 100 g or a quarter of a pound: "6.4 kg", "10.25 lb". */
    public String shopMass(double massKg) {
        return metric()
                ? figure(Math.ceil(massKg * 10 - 1e-6) / 10, 1) + " kg"
                : figure(Math.ceil(massKg / Units.KG_PER_POUND * 4 - 1e-6) / 4, 2) + " lb";
    }

    /** A temperature to half a step that matters: "18.5 °C", "65 °F". */
    public String temperature(double temperatureC) {
        return metric() ? figure(temperatureC, 1) + " °C" : figure(Units.fahrenheitOfCelsius(temperatureC), 0) + " °F";
    }

    /** A difference of temperatures: "3 °C", "5.4 °F", without an offset. */
    public String temperatureStep(double stepK) {
        return metric() ? figure(stepK, 1) + " °C" : figure(stepK * 1.8, 1) + " °F";
    }

    /** A plain figure to two decimals: "1.42". */
    public String ratio(double ratio) {
        return fixed(ratio, 2);
    }

    /** Moving air: "14.2 m³/h", "8.4 cfm" (cubic feet per minute). */
    public String airFlow(double airFlowM3PerHour) {
        return metric() ? figure(airFlowM3PerHour, 1) + " m³/h" : figure(airFlowM3PerHour / 1.699011, 1) + " cfm";
    }

    /** Wet-basis moisture: "44.1 %". */
    public String moisture(Moisture moisture) {
        return figure(moisture.wetBasisPercent(), 1) + " %";
    }

    /** A share of one in whole percent: "95 %". */
    public String percent(double fraction) {
        return figure(fraction * 100, 0) + " %";
    }

    /** A colour on the person's scale: "3.5 EBC". */
    public String colour(double colourEbc) {
        double figure = units.colour().ofEbc(colourEbc);
        return figure(figure, figure < 20 ? 1 : 0) + " " + units.colour().symbol();
    }

    /** A volume: "12.5 L", "400 mL", "3.3 gal", "13 fl oz". */
    public String volume(double volumeL) {
        if (metric()) return volumeL < 1 ? figure(volumeL * 1000, 0) + " mL" : figure(volumeL, 1) + " L";
        double gallons = volumeL / Units.L_PER_US_GALLON;
        return gallons < 0.5 ? figure(gallons * 128, 0) + " fl oz" : figure(gallons, 1) + " gal";
    }

    /** A length: "5 cm", "2 in". */
    public String length(double lengthCm) {
        return metric() ? figure(lengthCm, 1) + " cm" : figure(lengthCm / 2.54, 1) + " in";
    }

    /** An area: "0.36 m²", "3.9 sq ft". */
    public String area(double areaM2) {
        return metric() ? figure(areaM2, 2) + " m²" : figure(areaM2 / (0.3048 * 0.3048), 1) + " sq ft";
    }

    /** A length of time to the minute: "45 min", "7 h 30 min", "3 d 4 h". */
    public String time(Duration time) {
        long minutes = Math.round(time.toSeconds() / 60.0);
        long days = minutes >= 72 * 60 ? minutes / (24 * 60) : 0;
        minutes -= days * 24 * 60;
        StringBuilder words = new StringBuilder();
        if (days > 0) words.append(figure(days, 0)).append(" d ");
        if (minutes >= 60) words.append(figure(minutes / 60, 0)).append(" h ");
        if (minutes % 60 > 0 && days == 0 || words.isEmpty()) {
            words.append(figure(minutes % 60, 0)).append(" min");
        }
        return words.toString().strip();
    }

    /** A length of time to the second where the last minute is not whole: "8 min 30 s", "48 min". */
    public String timer(Duration time) {
        long seconds = time.toSeconds() % 60;
        if (seconds == 0) return time(time);
        Duration whole = time.minusSeconds(seconds);
        return (whole.isZero() ? "" : time(whole) + " ") + figure(seconds, 0) + " s";
    }

    boolean isMetric() {
        return metric();
    }

    private boolean metric() {
        return units.system() == UnitSystem.METRIC;
    }

    private String figure(double figure, int mostDecimals) {
        return format(figure, mostDecimals, 0);
    }

    private String fixed(double figure, int decimals) {
        return format(figure, decimals, decimals);
    }

    private String format(double figure, int mostDecimals, int fewestDecimals) {
        DecimalFormat format = new DecimalFormat("0", DecimalFormatSymbols.getInstance(units.locale()));
        format.setGroupingUsed(false);
        format.setMaximumFractionDigits(mostDecimals);
        format.setMinimumFractionDigits(fewestDecimals);
        format.setRoundingMode(RoundingMode.HALF_UP);
        double unsigned = Math.abs(figure) < 0.5 * Math.pow(10, -mostDecimals) ? 0 : figure;
        return format.format(unsigned);
    }
}
