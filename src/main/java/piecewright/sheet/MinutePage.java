package piecewright.sheet;

import piecewright.chart.Markup;
import piecewright.plan.Act;
import piecewright.plan.InnerSchedule;
import piecewright.plan.InnerSchedule.InnerStep;
import piecewright.text.Phrases;

/** The minutes of an attended block as a table with its clock times and room for what was found. */
record MinutePage(Markup page, SheetWords words) {
    void write(Act act, InnerSchedule inner) {
        page.leaf("p", words.sentences().innerHead(inner), "class", "minutes-head")
                .line();
        page.open("table", "class", "minutes").line();
        page.open("thead").open("tr");
        for (String key : new String[] {"minute", "clock", "step", "found"}) {
            page.leaf("th", Phrases.say("sheet.inner." + key), "scope", "col");
        }
        page.close().close().line().open("tbody").line();
        for (InnerStep step : inner.steps()) {
            page.open("tr").leaf("th", "+" + words.sentences().innerTimer(step), "scope", "row");
            page.leaf("td", words.moments().clock(act.startsAt().plus(step.at())));
            page.leaf("td", words.sentences().innerStep(act, step), "class", "step");
            page.open("td", "class", "found");
            page.single("input", "type", "text", "size", "5", "autocomplete", "off");
            page.close().close().line();
        }
        page.close().line().close().line();
    }
}
