package piecewright.campaign;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** What was written down about a batch: nothing that was kept may ever be missing or read otherwise. */
final class Diary {
    private final String batch;
    private final Terminal terminal;
    private final Verdicts verdicts;
    private List<String> known = new ArrayList<>();
    private int lastNumber;
    private String lastAnswer = "";

    Diary(String batch, Terminal terminal, Verdicts verdicts) {
        this.batch = batch;
        this.terminal = terminal;
        this.verdicts = verdicts;
    }

    /** The number of the entry written last. */
    int lastNumber() {
        return lastNumber;
    }

    /** Whether an entry of that number was written: where a line cannot be read a number may be left out. */
    boolean has(int number) {
        return known.stream().anyMatch(line -> line.startsWith(number + " "));
    }

    /** What was said to the line typed last. */
    String lastAnswer() {
        return lastAnswer;
    }

    /** Types a line and answers with the first offer where something is asked; whether anything was kept. */
    boolean typed(Instant now, String line) {
        Terminal.Said said = typedOnce(now, line);
        if (said.code() == 2
                && said.out().startsWith("{")
                && said.json().path("choices").size() > 0) {
            String choice = said.json().get("choices").get(0).stringValue();
            Terminal.Said again = typedOnce(now, choice);
            if (again.code() == 0) return true;
        }
        return said.well();
    }

    /** Types a line and answers nothing; whether it was kept without a question. */
    boolean keptUnasked(Instant now, String line) {
        return typedOnce(now, line).well();
    }

    private Terminal.Said typedOnce(Instant now, String line) {
        Terminal.Said said = terminal.run(now, "record", batch, "--json", "--now", now.toString(), "--", line);
        lastAnswer = (said.out() + said.err()).replaceAll("\\s+", " ");
        if (said.code() == 2 && said.out().startsWith("{") && !said.json().has("question")) {
            verdicts.found("nothing is asked where something was unclear", "record", said.out());
        }
        List<String> kept = new ArrayList<>();
        if (said.well() && said.out().startsWith("{")) {
            for (JsonNode entry : said.json().path("entries")) {
                kept.add(line(entry));
                if (said.json().path("entries").size() > 0)
                    lastNumber = entry.get("number").intValue();
            }
        }
        compare(now, kept);
        return said;
    }

    /** Reads the whole journal and holds it against what is known. */
    void compare(Instant now, List<String> justKept) {
        Terminal.Said listing = terminal.run(now, "record", batch, "--json", "--now", now.toString());
        if (!listing.well()) {
            verdicts.found("the journal cannot be read", "record", listing.err());
            return;
        }
        List<String> all = new ArrayList<>();
        listing.json().get("entries").forEach(entry -> all.add(line(entry)));
        if (!all.containsAll(known)) verdicts.found("an entry was lost or changed", "record", known + " now " + all);
        if (!all.containsAll(justKept)) verdicts.found("a kept entry is not there", "record", justKept + " in " + all);
        known = all;
    }

    private static String line(JsonNode entry) {
        return entry.get("number") + " " + entry.get("at").stringValue() + " " + entry.get("report");
    }
}
