package piecewright.campaign;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What somebody wants made of which lot, and from when. */
record Wish(String style, Path lot, LocalDate today, List<String> words) {
    private static final Map<String, String> LOTS = Map.of(
            "wheat-pale", "winter-wheat",
            "rye-pale", "winter-rye",
            "oat", "hulled-oats",
            "spelt-pale", "dehulled-spelt",
            "hull-less", "hull-less-barley");

    private static final List<String> BARLEY = List.of(
            "two-row-barley",
            "two-row-barley",
            "low-germination-barley",
            "water-sensitive-barley",
            "sack-without-label");

    private static final List<String> STYLES = List.of(
            "pale",
            "pale",
            "pale-ale",
            "vienna",
            "munich",
            "dark",
            "amber",
            "brown",
            "chocolate",
            "black",
            "crystal-light",
            "crystal-medium",
            "crystal-dark",
            "wheat-pale",
            "rye-pale",
            "oat",
            "spelt-pale",
            "hull-less");

    static Wish any(Dice dice, boolean us) {
        String style = dice.of(STYLES);
        Path lot = Path.of("demo-data", "lots", LOTS.getOrDefault(style, dice.of(BARLEY)) + ".json");
        LocalDate start = dice.once(0.25)
                ? dice.of(List.of(LocalDate.of(2027, 3, 24), LocalDate.of(2027, 10, 26), LocalDate.of(2027, 3, 9)))
                : LocalDate.of(2027, 1, 10).plusDays(dice.from(0, 330));
        LocalDate today = start.minusDays(dice.from(0, 9));
        List<String> words = new ArrayList<>(List.of("--style", style));
        double kg = dice.between(1.5, 5);
        String amount =
                us ? String.format(Locale.ROOT, "%.1f lb", kg * 2.2) : String.format(Locale.ROOT, "%.0f g", kg * 1000);
        words.addAll(List.of(dice.once(0.7) ? "--grain" : "--malt", amount));
        if (dice.once(0.75)) words.addAll(List.of("--start", start.toString()));
        else words.addAll(List.of("--ready-by", start.plusDays(50).toString()));
        words.addAll(List.of("--today", today.toString()));
        if (dice.once(0.7)) words.add("--skip-checks");
        if (dice.once(0.03)) words.addAll(List.of("--leave-open", "place,bed,water"));
        return new Wish(style, lot, today, words);
    }
}
