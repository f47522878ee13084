package piecewright.store;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Damages a good file: letters and octets anywhere, or values, keys and blocks where JSON has them, or cells of a table. */
final class Damage {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final int LONG_TEXT = 20_000;
    private static final int LONG_LIST = 3_000;

    private static final List<String> PIECES = List.of(
            "null",
            "-1",
            "1e999",
            "NaN",
            "\"\"",
            "{",
            "}",
            "[",
            "]",
            ",",
            ":",
            "\"",
            "\\u0000",
            "\ud83d",
            "true",
            "99999999999999999999",
            "\"5 kg\"",
            "{}",
            "[]",
            "=1+1",
            "\n",
            "\r",
            ";",
            "1,234",
            "2027-02-30",
            "24:00",
            "Europe/Nowhere",
            "../../etc/passwd",
            "\\\\host\\share",
            "\u202e",
            "\ufeff",
            "[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[");

    private static final List<String> TEXTS = List.of(
            "",
            " ",
            "5 kg",
            "-3",
            "1e400",
            "1 000 000",
            "55 F",
            "999 gal",
            "2027-13-01",
            "0000-00-00",
            "25:61",
            "22:00-21:00",
            "00:00-24:00",
            "Pluto/Charon",
            "UTC+99",
            "../../../etc/passwd",
            "/dev/zero",
            "nul",
            ".",
            "a\u0000b",
            "</script>",
            "\u202eevil",
            "\ud83c\udf3e",
            "\ud83c",
            "=cmd|' /C calc'!A0",
            "monday",
            "friday-monday",
            "٤٢ kg",
            "2027-03-26T10:00",
            "+1000000000-12-31T23:59:59Z",
            "-999999999-01-01T00:00:00Z");

    private static final List<Double> FIGURES = List.of(
            0.0, -0.0, 1.0, -1.0, 0.5, 1e-300, 1e300, -1e300, 1e-9, 99.999, 100.0, 101.0, 1e6, 2_147_483_648.0, 1e18);

    private final Random random;

    Damage(Random random) {
        this.random = random;
    }

    /** Some damage to these octets. */
    byte[] of(byte[] good) {
        int kind = random.nextInt(20);
        if (kind == 0) return Arrays.copyOf(good, random.nextInt(good.length));
        if (kind == 1) return noise(good);
        String text = new String(good, StandardCharsets.UTF_8);
        boolean json = text.startsWith("{");
        boolean jsonLines = json && text.contains("\n{");
        if (kind < 12 && jsonLines) return lines(text).getBytes(StandardCharsets.UTF_8);
        if (kind < 12 && json) return structure(text).getBytes(StandardCharsets.UTF_8);
        if (kind < 12 && text.contains("\n")) return cells(text).getBytes(StandardCharsets.UTF_8);
        byte[] bytes = letters(text).getBytes(StandardCharsets.UTF_8);
        if (random.nextInt(4) == 0 && bytes.length > 0)
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        return bytes;
    }

    /** One line of JSON damaged in its structure, or lines left out, doubled or exchanged. */
    private String lines(String good) {
        List<String> lines = new ArrayList<>(List.of(good.split("\n")));
        int at = random.nextInt(lines.size());
        switch (random.nextInt(6)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(at, any(lines));
            case 2 -> Collections.swap(lines, at, random.nextInt(lines.size()));
            default -> lines.set(at, structure(lines.get(at)));
        }
        return String.join("\n", lines) + "\n";
    }

    /** Letters taken out and put in. */
    String letters(String good) {
        String text = good;
        for (int times = 1 + random.nextInt(3); times > 0; times--) {
            int at = random.nextInt(text.length() + 1);
            int until = Math.min(text.length(), at + random.nextInt(8));
            text = text.substring(0, at) + any(PIECES) + text.substring(until);
        }
        return text;
    }

    private byte[] noise(byte[] good) {
        byte[] bytes = good.clone();
        for (int i = random.nextInt(bytes.length); i < bytes.length && random.nextInt(50) > 0; i++) {
            bytes[i] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    private String structure(String good) {
        ObjectNode root = (ObjectNode) MAPPER.readTree(good);
        for (int times = 1 + random.nextInt(2); times > 0; times--) {
            List<JsonNode> blocks = new ArrayList<>();
            gather(root, blocks);
            change(any(blocks), any(blocks));
        }
        String text = MAPPER.writeValueAsString(root);
        return random.nextInt(20) == 0 ? text.replaceFirst(",", ",\"format\":1,") : text;
    }

    private static void gather(JsonNode node, List<JsonNode> blocks) {
        if (node.isObject() || node.isArray()) blocks.add(node);
        for (JsonNode member : node) gather(member, blocks);
    }

    private void change(JsonNode block, JsonNode other) {
        if (block instanceof ObjectNode object && !object.isEmpty()) {
            String key = any(new ArrayList<>(object.propertyNames()));
            switch (random.nextInt(6)) {
                case 0 -> object.remove(key);
                case 1 -> object.set(key + "x", object.remove(key));
                case 2 -> object.set(key, other.deepCopy());
                case 3 -> object.set(any(TEXTS), object.get(key).deepCopy());
                default -> object.set(key, value(object.get(key)));
            }
        } else if (block instanceof ArrayNode array && !array.isEmpty()) {
            int at = random.nextInt(array.size());
            switch (random.nextInt(5)) {
                case 0 -> array.remove(at);
                case 1 -> array.add(array.get(at).deepCopy());
                case 2 -> array.insert(at, other.deepCopy());
                case 3 -> grow(array, array.get(at));
                default -> array.set(at, value(array.get(at)));
            }
        }
    }

    private void grow(ArrayNode array, JsonNode member) {
        if (random.nextInt(20) > 0 || member.size() > 3) return;
        for (int i = 0; i < LONG_LIST; i++) array.add(member.deepCopy());
    }

    private JsonNode value(JsonNode before) {
        return switch (random.nextInt(9)) {
            case 0 -> NODES.nullNode();
            case 1 -> NODES.booleanNode(random.nextBoolean());
            case 2 -> NODES.numberNode(any(FIGURES));
            case 3 ->
                NODES.numberNode(before.isNumber() ? before.doubleValue() * Math.pow(10, random.nextInt(7) - 3) : 7);
            case 4 ->
                NODES.numberNode(before.isNumber() ? before.doubleValue() + random.nextInt(5) - 2 : random.nextInt());
            case 5 -> NODES.stringNode(random.nextInt(20) == 0 ? "x".repeat(LONG_TEXT) : any(TEXTS));
            case 6 -> NODES.arrayNode().add(before.deepCopy());
            case 7 -> NODES.objectNode().set("x", before.deepCopy());
            default -> NODES.stringNode(before.isString() ? letters(before.stringValue()) : before.toString());
        };
    }

    private String cells(String good) {
        List<String> rows = new ArrayList<>(good.lines().toList());
        int at = random.nextInt(rows.size());
        switch (random.nextInt(7)) {
            case 0 -> rows.remove(at);
            case 1 -> rows.add(at, rows.get(at));
            case 2 -> Collections.swap(rows, at, random.nextInt(rows.size()));
            case 3 -> rows.set(at, rows.get(at).replace(',', ';'));
            case 4 -> rows.set(at, rows.get(at) + "," + any(TEXTS));
            case 5 -> rows.set(at, "\"" + rows.get(at));
            default -> rows.set(at, cell(rows.get(at)));
        }
        return String.join(random.nextInt(10) == 0 ? "\r" : "\n", rows);
    }

    private String cell(String row) {
        String[] cells = row.split(",", -1);
        cells[random.nextInt(cells.length)] = random.nextBoolean() ? any(TEXTS) : any(PIECES);
        return String.join(",", cells);
    }

    private <T> T any(List<T> choice) {
        return choice.get(random.nextInt(choice.size()));
    }
}
