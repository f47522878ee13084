package piecewright.calendar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Our own rules for every file we write, run on its octets. Stricter than RFC 5545 where calendars in use are known to
 * stumble, and catching what general validators let through: UIDs used twice, zones without a definition, mixed time
 * forms, colours in hex, missing escapes, long lines. The numbers are those of the list in DEVELOPERS.md.
 *
 * <p>1–6 octets · 7–11 the calendar · 12–31 each event · 32–36 each alarm.
 */
public final class IcsChecks {
    private final List<String> privateWords;

    public IcsChecks() {
        this(List.of());
    }

    /** Also looks for words that must not leave the machine, such as the user's or the host's name (check 31). */
    public IcsChecks(List<String> privateWords) {
        this.privateWords = List.copyOf(privateWords);
    }

    /** Everything wrong with this file; empty if nothing is. */
    public List<IcsFault> faultsOf(byte[] octets) {
        List<IcsFault> faults = new ArrayList<>();
        ByteChecks.check(octets, faults);
        Optional<IcsComponent> calendar = IcsReading.calendar(octets);
        if (calendar.isEmpty()) {
            faults.add(new IcsFault(5, "not one well-formed VCALENDAR"));
            return List.copyOf(faults);
        }
        CalendarChecks.check(calendar.get(), faults);
        ZoneChecks.check(calendar.get(), faults);
        for (IcsComponent event : calendar.get().inside("VEVENT")) {
            EventChecks.check(event, faults);
            AlarmChecks.check(event, faults);
        }
        lookForPrivateWords(octets, faults);
        return List.copyOf(faults);
    }

    private void lookForPrivateWords(byte[] octets, List<IcsFault> faults) {
        if (privateWords.isEmpty()) return;
        String all = String.join("\n", IcsReading.unfolded(octets));
        for (String word : privateWords) {
            if (holds(all, word)) faults.add(new IcsFault(31, word));
        }
    }

    /** Whether the word stands there by itself; "root" is not in "deroot". */
    private static boolean holds(String all, String word) {
        for (int at = all.indexOf(word); at >= 0; at = all.indexOf(word, at + 1)) {
            int end = at + word.length();
            boolean joinedBefore = at > 0 && joined(all.charAt(at - 1), word.charAt(0));
            boolean joinedAfter = end < all.length() && joined(word.charAt(word.length() - 1), all.charAt(end));
            if (!joinedBefore && !joinedAfter) return true;
        }
        return false;
    }

    private static boolean joined(char left, char right) {
        return Character.isLetterOrDigit(left) && Character.isLetterOrDigit(right);
    }
}
