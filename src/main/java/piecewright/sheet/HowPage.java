package piecewright.sheet;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import piecewright.chart.Markup;
import piecewright.plan.Act;
import piecewright.plan.Caution;
import piecewright.plan.Plan;
import piecewright.text.Phrases;

/** How each kind of step is done and what to look for, and each danger in full: once each, for all days. */
record HowPage(Markup page, SheetWords words) {
    void write(Plan plan) {
        Map<String, Act> kinds = new LinkedHashMap<>();
        Map<Caution, Set<String>> dangers = new LinkedHashMap<>();
        for (Act act : plan.acts()) {
            String kind = words.sentences().kindTitle(act);
            kinds.putIfAbsent(kind, act);
            for (Caution caution : act.cautions())
                dangers.computeIfAbsent(caution, each -> new LinkedHashSet<>()).add(kind);
        }
        list("how", kinds, (kind, act) -> {
            said(kind, words.sentences().howTo(act) + " " + words.sentences().lookFor(act));
            if (act.inner().isPresent())
                page.leaf("dd", Phrases.say("sheet.how.minutes")).line();
        });
        list(
                "cautions",
                dangers,
                (caution, where) -> said(
                        words.sentences().cautionName(caution) + " ("
                                + words.sentences().from(where) + ")",
                        words.sentences().caution(caution)));
    }

    private <K, V> void list(String name, Map<K, V> entries, java.util.function.BiConsumer<K, V> entry) {
        if (entries.isEmpty()) return;
        page.open("section", "class", name).line();
        page.leaf("h2", Phrases.say("sheet." + name)).line();
        page.open("dl").line();
        entries.forEach(entry);
        page.close().line().close().line();
    }

    private void said(String name, String sentences) {
        page.leaf("dt", name).leaf("dd", sentences).line();
    }
}
