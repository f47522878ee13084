package piecewright.sheet;

import java.util.Optional;
import piecewright.chart.Markup;
import piecewright.plan.Act;
import piecewright.plan.Plan;
import piecewright.text.Decides;
import piecewright.text.Phrases;

/** The steps, each in two lines: a box to tick, time and target; then what to set, what decides, when it is too late. */
record StepLines(Markup page, SheetWords words, Known known, Decides decides) {
    /** Judgement: so many steps fill a page; more are set smaller, so that they still share it. */
    private static final int MANY = 22;

    void write(Plan plan) {
        boolean many = plan.acts().size() > MANY;
        page.open("section", "class", many ? "steps many" : "steps").line();
        page.leaf("h2", Phrases.say("sheet.steps")).line();
        plan.acts().forEach(this::step);
        page.leaf("p", Phrases.say("sheet.blanks"), "class", "hint").line();
        page.close().line();
    }

    private void step(Act act) {
        boolean done = known.done().contains(act.id());
        page.open("article", "class", done ? "act done" : "act").line();
        page.open("h3").open("label");
        if (done) page.single("input", "type", "checkbox", "checked", "checked");
        else page.single("input", "type", "checkbox");
        page.leaf("span", words.moments().moment(act.startsAt()), "class", "time");
        page.leaf("b", " " + words.sentences().actTitle(act));
        page.close();
        String work = done ? Phrases.say("sheet.done") : words.quantities().time(act.work());
        page.leaf("span", " " + work, "class", "work");
        page.close().line();
        if (!done) open(act);
        page.close().line();
    }

    private void open(Act act) {
        target(act);
        blanks(act);
        page.open("p", "class", "sets");
        String set = decides.of(act);
        if (!set.equals(Decides.NOTHING)) page.leaf("b", set).text(" · ");
        page.text(words.sentences().shortWindow(act));
        page.close().line();
    }

    private void target(Act act) {
        page.open("p", "class", "target");
        page.leaf("b", words.quantities().scaleMass(act.expect().massKg()));
        Optional.ofNullable(known.bands().get(act.id()))
                .ifPresent(band -> page.text(" "
                        + Phrases.say(
                                "sheet.band",
                                words.quantities().scaleMass(band.lowKg()),
                                words.quantities().scaleMass(band.highKg()))));
        page.text(" · " + words.quantities().moisture(act.expect().moisture()));
        page.text(" · " + words.quantities().temperature(act.expect().grainC()));
        act.expect()
                .acrospireFraction()
                .ifPresent(fraction -> page.text(" · "
                        + Phrases.say("sheet.acrospire", words.quantities().percent(fraction))));
        page.close().line();
    }

    private void blanks(Act act) {
        page.open("p", "class", "blanks");
        blank("done-at");
        for (Blank blank : Blank.of(act.kind())) blank(Phrases.key(blank));
        page.close().line();
    }

    private void blank(String key) {
        page.open("label").text(Phrases.say("sheet.blank." + key) + " ");
        page.single("input", "type", "text", "size", "7", "autocomplete", "off")
                .close()
                .text(" ");
    }
}
