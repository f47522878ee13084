package piecewright.sheet;

import java.util.List;
import piecewright.chart.Markup;
import piecewright.plan.Check;
import piecewright.text.Phrases;

/** The tests of lot and kit before the first act, each with a box to tick and a blank for what it found. */
record CheckBlocks(Markup page, SheetWords words) {
    void write(List<Check> checks) {
        if (checks.isEmpty()) return;
        page.open("section", "class", "checks").line();
        page.leaf("h2", Phrases.say("sheet.checks")).line();
        page.leaf("p", Phrases.say("sheet.checks.why"), "class", "hint").line();
        checks.forEach(this::check);
        page.close().line();
    }

    private void check(Check check) {
        page.open("article", "class", "check").line();
        page.open("h3").open("label");
        page.single("input", "type", "checkbox");
        page.leaf(
                "b",
                words.moments().moment(check.startsAt()) + "  "
                        + words.sentences().checkTitle(check));
        page.close();
        page.leaf("span", " " + words.quantities().time(check.work()), "class", "work");
        page.close().line();
        page.open("p", "class", "blanks");
        for (String key : List.of("done-at", "result")) {
            page.open("label").text(Phrases.say("sheet.blank." + key) + " ");
            page.single("input", "type", "text", "size", "7", "autocomplete", "off");
            page.close().text(" ");
        }
        page.close().line();
        page.open("dl").line();
        said("page.when", Phrases.say("sheet.checks.latest", words.moments().moment(check.latest())));
        said("page.do", words.sentences().checkToDo(check));
        said("page.why", words.sentences().checkGain(check));
        page.close().line().close().line();
    }

    private void said(String key, String sentence) {
        page.leaf("dt", Phrases.say(key)).leaf("dd", sentence).line();
    }
}
