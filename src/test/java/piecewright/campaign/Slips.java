package piecewright.campaign;

import java.util.List;
import piecewright.oracle.Told;

/** What wet hands, haste and curiosity type. */
final class Slips {
    private static final List<String> NONSENSE = List.of(
            "drnd",
            "",
            "   ",
            "?",
            "drained 02:30",
            "couch 300 C",
            "couch 99 C",
            "bed -40 C",
            "kiln 900 F",
            "80 kg",
            "0 kg",
            "-3 kg",
            "correct 99 5 kg",
            "correct 0 5 kg",
            "correct 1 correct 1 5 kg",
            "strike 77",
            "undo",
            "scrap that",
            "acrospire 0 0 0 0 0",
            "acrospire 99999999999 1 1 1 1",
            "chitted 120 of 100",
            "moisture 140 %",
            "colour -4 EBC",
            "colour 4 EBC",
            "drained 12:00 tomorrow",
            "not drained yet",
            "didn't turn",
            "no mould",
            "is it time to drain?",
            "drained half nine",
            "drained yesterday 25:00",
            "soaked this morning 8.05",
            "soaked 14.10",
            "note \u001b[31mred\u001b[0m",
            "note " + "long ".repeat(500),
            "@/etc/hostname",
            "--help",
            "water change",
            "power out",
            "power back",
            "kiln is busy",
            "smells foul",
            "fuzz",
            "started",
            "\u00f6ffnen \ud83c\udf3e 5 kg",
            "5",
            "7,7 kg",
            "7.7 kg 7.9 kg");

    private final Dice dice;
    private final Lines lines;

    Slips(Dice dice, Lines lines) {
        this.dice = dice;
        this.lines = lines;
    }

    /** Typed by mistake before the step is. */
    String instead(Told.Step step) {
        return switch (dice.from(0, 4)) {
            case 0 -> "loaded " + lines.weight(step);
            case 1 -> lines.mass(step.expect().massKg() * 10);
            case 2 -> lines.mass(step.expect().massKg() / 3);
            default -> dice.of(NONSENSE);
        };
    }

    /** A change of mind about an entry of this number. */
    String secondThought(int entry, Told.Step step) {
        return switch (dice.from(0, 4)) {
            case 0 -> "strike " + entry;
            case 1 -> "undo";
            case 2 -> "correct " + entry + " " + dice.one("derooted", "note never mind", "couch 45 C");
            default -> "correct " + entry + " " + lines.weight(step);
        };
    }
}
