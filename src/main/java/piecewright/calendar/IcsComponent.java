package piecewright.calendar;

import java.util.List;
import java.util.Optional;

/** A component as read: its own lines and the components inside it, both in order. */
record IcsComponent(String name, List<IcsLine> lines, List<IcsComponent> inside) {
    long count(String property) {
        return lines.stream().filter(line -> line.name().equals(property)).count();
    }

    Optional<IcsLine> first(String property) {
        return lines.stream().filter(line -> line.name().equals(property)).findFirst();
    }

    /** The value of the first such property as written, or "". */
    String value(String property) {
        return first(property).map(IcsLine::value).orElse("");
    }

    List<IcsComponent> inside(String component) {
        return inside.stream().filter(child -> child.name().equals(component)).toList();
    }
}
