package piecewright.campaign;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import piecewright.oracle.Told;

/** What somebody types about a step, in the units and with the decimal sign of the house. */
final class Lines {
    private static final double LB_PER_KG = 2.2046226;
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final Dice dice;
    private final Homestead house;
    /** How this house's grain differs from what is told, share of the weight. */
    private final double bias;

    Lines(Dice dice, Homestead house) {
        this.dice = dice;
        this.house = house;
        this.bias = dice.spread(0.015);
    }

    /** The step as done, with the clock behind it where one is given. */
    String did(Told.Step step, LocalTime at) {
        String words = words(step);
        return at == null ? words : words + " " + at.format(CLOCK);
    }

    private String words(Told.Step step) {
        String weight = dice.once(0.8) ? " " + weight(step) : "";
        return switch (step.kind()) {
            case "soak" -> dice.one("soaked", "under water");
            case "drain" -> dice.one("drained", "poured off") + weight;
            case "floor" -> dice.one("spread on the floor", "spread");
            case "sprinkle" -> "sprinkled " + dice.one("0" + house.decimalSign() + "3 L", "300 ml");
            case "load" -> "loaded" + weight;
            case "off" -> "off the kiln" + weight;
            case "pack" -> "packed the couch" + weight;
            case "break" -> "broke the couch";
            case "wither" -> "withering";
            case "heap" -> "heaped";
            case "turn" -> "turned" + dice.one("", ", " + bed(step));
            case "stir" -> "stirred" + weight;
            case "cure" -> "curing" + weight;
            case "raise" -> "raised" + weight;
            case "check", "look" ->
                dice.one("looked at the couch", "couch " + degrees(step.expect().grainC() + dice.spread(2)));
            case "deroot" -> "derooted" + weight;
            case "stew" -> "stewed";
            case "roast" -> "roasted";
            default -> step.kind();
        };
    }

    String weight(Told.Step step) {
        double kg = step.expect().massKg() * (1 + bias + dice.spread(0.004));
        return mass(kg);
    }

    String mass(double kg) {
        String figure = house.us()
                ? String.format(Locale.ROOT, "%.2f lb", kg * LB_PER_KG)
                : String.format(Locale.ROOT, "%.2f kg", kg);
        return figure.replace('.', house.decimalSign());
    }

    String degrees(double c) {
        return house.us()
                ? String.format(Locale.ROOT, "%.0f F", c * 1.8 + 32)
                : String.format(Locale.ROOT, "%.0f C", c);
    }

    String bed(Told.Step step) {
        return "bed " + degrees(step.expect().grainC() + dice.spread(1.5));
    }

    /** Something looked at between two steps. */
    String measured(Told.Step next) {
        return switch (next.kind()) {
            case "turn", "pack", "wither" -> dice.once(0.5) ? bed(next) : acrospires(next);
            case "check", "break" -> "couch " + degrees(next.expect().grainC() + dice.spread(3));
            case "raise", "cure", "stir", "off" -> dice.once(0.5) ? weight(next) : "air off " + degrees(30);
            case "load", "stew" -> acrospires(next);
            default -> dice.one("smells of apples", "note all well", "water " + degrees(12), weight(next));
        };
    }

    /** Fifty kernels in the classes of a count, about the mean expected. */
    private String acrospires(Told.Step step) {
        double mean = step.expect().acrospire().orElse(0.1);
        int[] classes = new int[5];
        for (int i = 0; i < 50; i++) {
            double one = mean + dice.spread(0.18);
            classes[one < 0.25 ? 0 : one < 0.5 ? 1 : one < 0.75 ? 2 : one < 1 ? 3 : 4]++;
        }
        StringBuilder line = new StringBuilder("acrospire");
        for (int corns : classes) line.append(' ').append(corns);
        return line.toString();
    }
}
