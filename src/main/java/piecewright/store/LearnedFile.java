package piecewright.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import piecewright.belief.Belief;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.learn.Learned;
import piecewright.learn.Learned.Chapter;
import piecewright.text.Quoted;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Keeps what batches taught beside the file of the lot or house it is about, format 1. That file is a person's own and
 * is never rewritten; whoever deletes the file beside it forgets what was learned and nothing else.
 */
public final class LearnedFile {
    private static final String ENDING = ".learned.json";
    private static final int MOST_UNKNOWNS = 200;

    private LearnedFile() {}

    /** Where what a lot or house taught lies: "barley.json" has "barley.learned.json" beside it. */
    public static Path beside(Path file) {
        Path whole = Links.end(file);
        String name = String.valueOf(whole.getFileName());
        String stem = name.endsWith(".json") ? name.substring(0, name.length() - 5) : name;
        return whole.resolveSibling(stem + ENDING);
    }

    /** The text of what is kept beside a lot's or house's file; empty when nothing was learned yet. */
    public static String textBeside(Path file) throws StoreException {
        Path learned = beside(file);
        return Files.exists(learned) ? text(learned) : "";
    }

    /** The text of a file of what was learned. */
    public static String text(Path learned) throws StoreException {
        return TextFile.read(learned, TextFile.SMALL_BYTES);
    }

    /** What this text holds, nothing for an empty one; the file is only named in refusals. */
    public static Learned parse(Path file, String text) throws StoreException {
        if (text.isEmpty()) return Learned.nothing();
        JsonBlock root = JsonBlock.root(file, text, "learned");
        List<JsonBlock> blocks = root.blocks("learned");
        if (blocks.size() > Learned.MOST_CHAPTERS) {
            throw root.refused("learned", "has more than " + Learned.MOST_CHAPTERS + " batches; remove the first ones");
        }
        List<Chapter> chapters = new ArrayList<>();
        for (JsonBlock block : blocks) chapters.add(chapter(block));
        return root.make(() -> new Learned(chapters));
    }

    private static Chapter chapter(JsonBlock block) throws StoreException {
        block.onlyKeys("batch", "learnedAt", "beliefs");
        UUID batch = uuid(block);
        Instant learnedAt = instant(block);
        List<JsonBlock> beliefs = block.blocks("beliefs");
        if (beliefs.size() > MOST_UNKNOWNS) {
            throw block.refused("beliefs", "has more than " + MOST_UNKNOWNS + " members; take the file from a copy");
        }
        List<Belief.Single> singles = new ArrayList<>();
        double[][] correlations = new double[beliefs.size()][];
        for (JsonBlock belief : beliefs) {
            correlations[singles.size()] = belief.onlyKeys("trait", "of", "value", "axisSd", "correlations")
                    .numbers("correlations", -1, 1);
            singles.add(single(belief));
        }
        Belief belief = block.make(() -> Belief.correlated(singles, correlations));
        return new Chapter(batch, learnedAt, belief);
    }

    private static Belief.Single single(JsonBlock block) throws StoreException {
        String key = block.text("trait");
        Trait trait = Arrays.stream(Trait.values())
                .filter(each -> each.key().equals(key))
                .findFirst()
                .orElseThrow(() -> block.refused(
                        "trait",
                        "\"" + Quoted.shortly(key) + "\" is not known; "
                                + Nearest.hint(
                                        key,
                                        Arrays.stream(Trait.values())
                                                .map(Trait::key)
                                                .toList())));
        String item = block.text("of");
        double value = block.number("value", trait.lowest(), trait.highest());
        double axisSd = block.number("axisSd", 1e-6, 100);
        return block.make(() -> new Belief.Single(new Unknown(trait, item), value, axisSd));
    }

    /** Replaces what is kept beside a lot's or house's file. */
    public static void write(Path file, Learned learned) throws StoreException {
        GoodCopy.write(beside(file), text(learned));
    }

    /** The document of what was learned. */
    static String text(Learned learned) {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        ArrayNode chapters = root.putArray("learned");
        for (Chapter chapter : learned.chapters()) {
            ObjectNode node = chapters.addObject();
            node.put("batch", chapter.batch().toString());
            node.put("learnedAt", chapter.learnedAt().toString());
            put(node.putArray("beliefs"), chapter.belief());
        }
        return JsonText.write(root);
    }

    private static void put(ArrayNode beliefs, Belief belief) {
        List<Unknown> before = new ArrayList<>();
        for (Unknown unknown : belief.unknowns()) {
            ObjectNode node = beliefs.addObject();
            node.put("trait", unknown.trait().key());
            node.put("of", unknown.item());
            node.put("value", belief.value(unknown));
            node.put("axisSd", belief.axisSd(unknown));
            ArrayNode correlations = node.putArray("correlations");
            before.forEach(other -> correlations.add(belief.correlation(unknown, other)));
            before.add(unknown);
        }
    }

    private static UUID uuid(JsonBlock block) throws StoreException {
        String text = block.text("batch");
        if (text.matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")) return UUID.fromString(text);
        throw block.refused("batch", "\"" + Quoted.shortly(text) + "\" is not a UUID; take the file from a copy");
    }

    private static Instant instant(JsonBlock block) throws StoreException {
        String text = block.text("learnedAt");
        try {
            return Instant.parse(text);
        } catch (DateTimeParseException notAnInstant) {
            throw block.refused("learnedAt", "\"" + Quoted.shortly(text) + "\" is not an instant; correct it");
        }
    }
}
