package piecewright.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import piecewright.chart.Markup;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Caution;
import piecewright.plan.Plan;
import piecewright.text.Phrases;

/** The acts by day, each with a box to tick, blanks and its target. A day can be read alone: nothing refers to another. */
final class ActBlocks {
    private final Markup page;
    private final SheetWords words;
    private final Known known;
    private final Map<ActKind, Act> explained = new EnumMap<>(ActKind.class);
    private final Map<Caution, Act> warned = new EnumMap<>(Caution.class);

    ActBlocks(Markup page, SheetWords words, Known known) {
        this.page = page;
        this.words = words;
        this.known = known;
    }

    void write(Plan plan) {
        Map<LocalDate, List<Act>> days = new LinkedHashMap<>();
        for (Act act : plan.acts()) {
            LocalDate day = act.startsAt().atZone(words.moments().zone()).toLocalDate();
            days.computeIfAbsent(day, each -> new ArrayList<>()).add(act);
        }
        days.forEach(this::day);
    }

    private void day(LocalDate day, List<Act> acts) {
        explained.clear();
        warned.clear();
        page.open("section", "class", "day").line();
        page.leaf("h2", words.moments().dayHeading(day)).line();
        acts.forEach(this::act);
        page.close().line();
    }

    private void act(Act act) {
        boolean done = known.done().contains(act.id());
        page.open("article", "class", done ? "act done" : "act").line();
        page.open("h3").open("label");
        if (done) page.single("input", "type", "checkbox", "checked", "checked");
        else page.single("input", "type", "checkbox");
        page.leaf(
                "b",
                words.moments().clock(act.startsAt()) + "  " + words.sentences().actTitle(act));
        page.close();
        String work = done ? Phrases.say("sheet.done") : words.quantities().time(act.work());
        page.leaf("span", " " + work, "class", "work");
        page.close().line();
        if (!done) whatToDo(act);
        page.close().line();
    }

    private void whatToDo(Act act) {
        target(act);
        blanks(act);
        page.open("dl").line();
        said("page.when", words.sentences().window(act));
        instructions(act);
        page.close().line();
        act.inner().ifPresent(inner -> new MinutePage(page, words).write(act, inner));
        act.cautions().forEach(caution -> caution(act, caution));
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
        page.text(" · "
                + Phrases.say(
                        "sheet.moisture",
                        words.quantities().moisture(act.expect().moisture())));
        page.text(" · "
                + Phrases.say(
                        "sheet.grain",
                        words.quantities().temperature(act.expect().grainC())));
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

    private void instructions(Act act) {
        Act before = explained.putIfAbsent(act.kind(), act);
        String what = words.sentences().whatToDo(act);
        if (before == null) {
            said("page.do", what);
            said("page.look", words.sentences().lookFor(act));
        } else if (what.equals(words.sentences().whatToDo(before))) {
            said(
                    "page.as-before",
                    Phrases.say("sheet.as-before.all", words.sentences().actTitle(before)));
        } else {
            said("page.do", what);
            said(
                    "page.look",
                    Phrases.say("sheet.as-before.look", words.sentences().actTitle(before)));
        }
    }

    private void said(String key, String sentence) {
        page.leaf("dt", Phrases.say(key)).leaf("dd", sentence).line();
    }

    private void caution(Act act, Caution caution) {
        Act before = warned.putIfAbsent(caution, act);
        page.open("p", "class", "caution").leaf("b", Phrases.say("page.caution") + ": ");
        page.text(
                before == null
                        ? words.sentences().namedCaution(caution)
                        : Phrases.say(
                                "page.caution.again",
                                words.sentences().cautionName(caution),
                                words.sentences().actTitle(before)));
        page.close().line();
    }
}
