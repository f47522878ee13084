package piecewright.calendar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A component as read: its own lines and the components inside it, both in order. */
record IcsComponent(String name, List<IcsLine> lines, List<IcsComponent> inside) {
    int count(String property) {
        int count = 0;
        for (IcsLine line : lines) if (line.name().equals(property)) count++;
        return count;
    }

    Optional<IcsLine> first(String property) {
        for (IcsLine line : lines) if (line.name().equals(property)) return Optional.of(line);
        return Optional.empty();
    }

    /** The value of the first such property as written, or "". */
    String value(String property) {
        for (IcsLine line : lines) if (line.name().equals(property)) return line.value();
        return "";
    }

    List<IcsComponent> inside(String component) {
        List<IcsComponent> found = new ArrayList<>();
        for (IcsComponent child : inside) if (child.name().equals(component)) found.add(child);
        return found;
    }
}
