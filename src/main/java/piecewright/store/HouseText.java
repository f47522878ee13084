package piecewright.store;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import piecewright.house.House;
import piecewright.house.LocalHours;
import piecewright.house.NightActs;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The text of a household's file, to be changed value by value; what nobody changes stays as it was written. Every
 * change gives a new text that was read as a household before it counts, or is refused with the key and the mend.
 * Values are named by JSON pointers such as "/kit/vessels/0/volumeL".
 */
public record HouseText(Path file, String text) {
    public HouseText {
        Objects.requireNonNull(file);
        Objects.requireNonNull(text);
    }

    /** Things a household has several of. */
    public enum Thing {
        PERSON("/people", "{\"name\":\"\",\"week\":{\"weekdays\":[\"18:00-22:00\"],\"weekend\":[\"08:00-22:00\"]}}"),
        PLACE("/places", "{\"name\":\"\",\"kind\":\"heated room\",\"air\":{\"constantC\":18}}"),
        VESSEL("/kit/vessels", "{\"name\":\"\",\"place\":\"\",\"volumeL\":20}"),
        TRAYS("/kit/trays", "{\"name\":\"\",\"place\":\"\",\"count\":1,\"areaM2\":0.2}"),
        BOX("/kit/boxes", "{\"name\":\"\",\"place\":\"\",\"volumeL\":40}"),
        HEATER(
                "/kit/heaters",
                "{\"name\":\"\",\"place\":\"\",\"holdsC\":[40,90],\"airFlowM3PerHour\":20,\"powerW\":1000,"
                        + "\"lossWPerK\":3,\"trayAreaM2\":0.3,\"holdsSetPoint\":true,\"rampsItself\":false,"
                        + "\"safeUnattended\":false,\"thermostatErrorK\":5}");

        private final String list;
        private final String example;

        Thing(String list, String example) {
            this.list = list;
            this.example = example;
        }

        /** Pointer to the list of them. */
        public String list() {
            return list;
        }
    }

    public static HouseText read(Path file) throws StoreException {
        return new HouseText(file, TextFile.read(file, TextFile.SMALL_BYTES));
    }

    /** The household this text describes. */
    public House house() throws StoreException {
        return HouseFile.parse(file, text);
    }

    public void write() throws StoreException {
        house();
        AtomicFile.write(file, text);
    }

    /** The files of readings that places name; they lie beside the house's own. */
    public List<Path> readings() {
        List<Path> readings = new ArrayList<>();
        for (int place = 0; place < size("/places"); place++) {
            value("/places/" + place + "/air/loggerCsv")
                    .map(file::resolveSibling)
                    .ifPresent(readings::add);
        }
        return readings;
    }

    /** A value as it is written, without quotes; empty where there is none. */
    public Optional<String> value(String pointer) {
        JsonNode node = root().at(pointer);
        if (node instanceof ArrayNode texts) {
            return Optional.of(String.join(
                    ", ",
                    texts.values().stream()
                            .map(each -> each.isString() ? each.stringValue() : each.toString())
                            .toList()));
        }
        if (node.isMissingNode() || node.isObject()) return Optional.empty();
        return Optional.of(node.isString() ? node.stringValue() : node.toString());
    }

    /** True where the value is a number, not a text with a unit. */
    public boolean isNumber(String pointer) {
        return root().at(pointer).isNumber();
    }

    public int size(String listPointer) {
        return root().at(listPointer).size();
    }

    public HouseText withText(String pointer, String value) throws StoreException {
        ObjectNode root = root();
        String before = root.at(pointer).isString() ? root.at(pointer).stringValue() : "";
        boolean renamesPlace = pointer.matches("/places/\\d+/name");
        put(root, pointer, root.stringNode(value));
        if (renamesPlace) movedTo(root, before, value);
        return judged(root);
    }

    public HouseText withNumber(String pointer, double value) throws StoreException {
        ObjectNode root = root();
        boolean whole = value == Math.rint(value) && Math.abs(value) < 1e9;
        put(root, pointer, whole ? root.numberNode((long) value) : root.numberNode(value));
        return judged(root);
    }

    public HouseText withFlag(String pointer, Flag value) throws StoreException {
        ObjectNode root = root();
        put(root, pointer, root.booleanNode(value == Flag.YES));
        return judged(root);
    }

    /** Whether something is so. */
    public enum Flag {
        YES,
        NO
    }

    /** The air of a place known in another way: keys and figures or a logger's file instead of what stood there. */
    public HouseText withAir(int place, Map<String, Double> figures, Optional<String> loggerCsv) throws StoreException {
        ObjectNode root = root();
        ObjectNode air = ((ObjectNode) root.at("/places/" + place)).putObject("air");
        figures.forEach(air::put);
        loggerCsv.ifPresent(csv -> air.put("loggerCsv", csv));
        return judged(root);
    }

    /** The same without a value or a member of a list. */
    public HouseText without(String pointer) throws StoreException {
        ObjectNode root = root();
        JsonPointer at = JsonPointer.compile(pointer);
        JsonNode parent = root.at(at.head());
        if (parent instanceof ObjectNode object) object.remove(at.last().getMatchingProperty());
        if (parent instanceof ArrayNode array) array.remove(at.last().getMatchingIndex());
        return judged(root);
    }

    /** One more thing of a kind under this name, or that name with a number behind it where it is taken. */
    public HouseText added(Thing thing, String name) throws StoreException {
        ObjectNode root = root();
        ObjectNode made = JsonText.parse(file, thing.example);
        made.put("name", free(root, name));
        if (made.has("place")) made.put("place", root.at("/places/0/name").asString());
        list(root, thing.list).add(made);
        return judged(root);
    }

    /** Hours of one dated day instead of its weekday's; none for away all day. */
    public HouseText withException(int person, LocalDate day, List<String> hours) throws StoreException {
        ObjectNode root = root();
        ArrayNode exceptions = list(root, "/people/" + person + "/exceptions");
        ObjectNode made = null;
        for (JsonNode each : exceptions) {
            if (each instanceof ObjectNode object
                    && day.toString().equals(object.path("date").asString())) made = object;
        }
        if (made == null) made = exceptions.addObject().put("date", day.toString());
        ArrayNode texts = made.putArray("hours");
        hours.forEach(texts::add);
        return judged(root);
    }

    /** When the night is, and how often somebody would get up in it for one piece. */
    public HouseText withNights(NightActs nights) throws StoreException {
        ObjectNode root = root();
        ObjectNode made = root.putObject("nightActs");
        made.put("most", nights.most());
        made.put("from", nights.from().toString());
        made.put("until", nights.until().toString());
        return judged(root);
    }

    /** A person's usual week. */
    public HouseText withWeek(String person, Map<DayOfWeek, List<LocalHours>> week) throws StoreException {
        ObjectNode root = root();
        ObjectNode found = null;
        for (JsonNode each : root.at("/people")) {
            boolean named = each.path("name").asString().equals(person);
            if (named && each instanceof ObjectNode node) found = node;
        }
        if (found == null) throw new StoreException(file, "has nobody of that name any more; read it again");
        ObjectNode hours = found.putObject("week");
        for (DayOfWeek day : DayOfWeek.values()) {
            List<LocalHours> ofDay = week.getOrDefault(day, List.of());
            if (ofDay.isEmpty()) continue;
            ArrayNode texts = hours.putArray(day.name().toLowerCase(Locale.ROOT));
            for (LocalHours each : ofDay) texts.add(stretch(each));
        }
        return judged(root);
    }

    private static String stretch(LocalHours hours) {
        String until = hours.untilExclusive().equals(LocalTime.MIDNIGHT)
                ? "24:00"
                : hours.untilExclusive().toString();
        return hours.fromInclusive() + "-" + until;
    }

    private ObjectNode root() {
        try {
            return JsonText.parse(file, text);
        } catch (StoreException unreadable) {
            throw new IllegalStateException("a text that was read before cannot be read", unreadable);
        }
    }

    private HouseText judged(ObjectNode root) throws StoreException {
        HouseText changed = new HouseText(file, JsonText.write(root));
        changed.house();
        return changed;
    }

    private static void put(ObjectNode root, String pointer, JsonNode value) {
        JsonPointer at = JsonPointer.compile(pointer);
        JsonNode parent = root.at(at.head());
        if (parent instanceof ObjectNode object) object.set(at.last().getMatchingProperty(), value);
        if (parent instanceof ArrayNode array) array.set(at.last().getMatchingIndex(), value);
    }

    private static ArrayNode list(ObjectNode root, String pointer) {
        JsonPointer at = JsonPointer.compile(pointer);
        if (root.at(at) instanceof ArrayNode there) return there;
        return ((ObjectNode) root.at(at.head())).putArray(at.last().getMatchingProperty());
    }

    /** What stood in a place stands in it under its new name. */
    private static void movedTo(ObjectNode root, String before, String name) {
        for (Thing thing : Thing.values()) {
            for (JsonNode each : root.at(thing.list)) {
                boolean there = each.path("place").asString("").equals(before);
                if (there && each instanceof ObjectNode object) object.put("place", name);
            }
        }
    }

    private static String free(ObjectNode root, String name) {
        Set<String> taken = new HashSet<>();
        for (Thing thing : Thing.values()) {
            for (JsonNode each : root.at(thing.list))
                taken.add(each.path("name").asString(""));
        }
        String free = name;
        for (int number = 2; taken.contains(free); number++) free = name + " " + number;
        return free;
    }
}
