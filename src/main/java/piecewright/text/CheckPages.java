package piecewright.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import piecewright.plan.Check;

/** The visits before the first act, as part of the page: when, what, and once for each test what it buys. */
final class CheckPages {
    private final Wording wording;
    private final MomentFormat moments;

    CheckPages(Wording wording, MomentFormat moments) {
        this.wording = wording;
        this.moments = moments;
    }

    String of(List<Check> checks) {
        StringBuilder page = new StringBuilder(Paragraph.of("", Phrases.say("page.checks.legend")));
        Map<String, List<Check>> byTest = new LinkedHashMap<>();
        for (Check check : checks) {
            String test = check.id().substring(0, check.id().lastIndexOf('.'));
            byTest.computeIfAbsent(test, key -> new ArrayList<>()).add(check);
        }
        byTest.values().forEach(visits -> test(visits, page));
        return page.toString();
    }

    private void test(List<Check> visits, StringBuilder page) {
        for (Check check : visits) {
            String when = Phrases.say(
                    "page.check",
                    moments.moment(check.startsAt()),
                    Long.toString(check.work().toMinutes()),
                    wording.checkTitle(check),
                    moments.moment(check.latest()));
            page.append(Paragraph.of("  ", when)).append(Paragraph.of("    ", wording.checkToDo(check)));
        }
        Check last = visits.get(visits.size() - 1);
        page.append(Paragraph.of("    ", wording.checkGain(last)));
        page.append(Paragraph.of("    ", wording.checkEntry(last)));
    }
}
