package piecewright.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Caution;
import piecewright.plan.InnerSchedule;
import piecewright.plan.Setting;
import piecewright.text.Columns.Column;
import piecewright.text.Columns.Side;

/** The acts of a plan by day: one row of figures each, and below it what to do. Said once, then referred to. */
final class ActPages {
    private static final String MARGIN = "  ";
    private static final int ACT_COLUMN = 2;

    private final Wording wording;
    private final QuantityFormat quantities;
    private final MomentFormat moments;
    private final Map<String, String> bands;
    private final Map<ActKind, Act> explained = new EnumMap<>(ActKind.class);
    private final Map<InnerSchedule, Act> timed = new HashMap<>();
    private final Map<Caution, Act> warned = new EnumMap<>(Caution.class);
    private final int labelWidth;

    /** @param bands a sentence for each act id that has one */
    ActPages(Wording wording, QuantityFormat quantities, MomentFormat moments, Map<String, String> bands) {
        this.wording = wording;
        this.quantities = quantities;
        this.moments = moments;
        this.bands = Map.copyOf(bands);
        this.labelWidth = List.of("when", "band", "do", "look", "why", "caution", "as-before", "inner").stream()
                        .mapToInt(key -> Phrases.say("page." + key).length())
                        .max()
                        .orElse(0)
                + 2;
    }

    String of(List<Act> acts) {
        Columns table = table(acts);
        String indent = MARGIN + " ".repeat(table.offset(ACT_COLUMN));
        StringBuilder page = new StringBuilder();
        List<LocalDate> days = new ArrayList<>();
        for (int i = 0; i < acts.size(); i++) {
            Act act = acts.get(i);
            LocalDate day = act.startsAt().atZone(moments.zone()).toLocalDate();
            if (!days.contains(day)) {
                days.add(day);
                page.append('\n').append(moments.dayHeading(day)).append('\n');
                page.append(MARGIN).append(table.titles()).append('\n');
            }
            page.append(MARGIN).append(table.row(i)).append('\n').append(below(act, indent));
        }
        return page.toString();
    }

    private Columns table(List<Act> acts) {
        Columns table = new Columns(List.of(
                column("start", Side.LEFT),
                column("minutes", Side.RIGHT),
                column("act", Side.LEFT),
                column("weight", Side.RIGHT),
                column("moisture", Side.RIGHT),
                column("grain", Side.RIGHT),
                column("acrospire", Side.RIGHT),
                column("set", Side.LEFT)));
        for (Act act : acts) {
            OptionalDouble acrospire = act.expect().acrospireFraction();
            table.add(
                    moments.clock(act.startsAt()),
                    Long.toString(act.work().toMinutes()),
                    wording.actTitle(act),
                    quantities.scaleMass(act.expect().massKg()),
                    quantities.moisture(act.expect().moisture()),
                    quantities.temperature(act.expect().grainC()),
                    acrospire.isPresent() ? quantities.percent(acrospire.getAsDouble()) : "–",
                    set(act));
        }
        return table;
    }

    static Column column(String key, Side side) {
        return new Column(Phrases.say("page.column." + key), side);
    }

    private String set(Act act) {
        Setting setting = act.setting();
        List<String> all = new ArrayList<>();
        boolean wets = setting.waterL().isPresent();
        if (wets && setting.setC().isPresent()) {
            all.add(Phrases.say(
                    "page.set.water-at",
                    quantities.volume(setting.waterL().getAsDouble()),
                    quantities.temperature(setting.setC().getAsDouble())));
        } else if (wets) {
            all.add(Phrases.say(
                    "page.set.water", quantities.volume(setting.waterL().getAsDouble())));
        } else if (setting.setC().isPresent()) {
            all.add(Phrases.say(
                    "page.set.air", quantities.temperature(setting.setC().getAsDouble())));
        }
        setting.limitC().ifPresent(limitC -> all.add(Phrases.say("page.set.limit", quantities.temperature(limitC))));
        setting.depthCm().ifPresent(depthCm -> all.add(Phrases.say("page.set.bed", quantities.length(depthCm))));
        return all.isEmpty() ? "–" : String.join(", ", all);
    }

    private String below(Act act, String indent) {
        StringBuilder lines = new StringBuilder();
        lines.append(line(indent, "when", wording.window(act)));
        String band = bands.get(act.id());
        if (band != null) lines.append(line(indent, "band", band));
        Act before = explained.putIfAbsent(act.kind(), act);
        if (before == null) {
            lines.append(line(indent, "do", wording.whatToDo(act)));
            lines.append(line(indent, "look", wording.lookFor(act)));
            lines.append(line(indent, "why", wording.why(act)));
        } else if (wording.whatToDo(act).equals(wording.whatToDo(before))) {
            lines.append(line(indent, "as-before", Phrases.say("page.as-before.all", wording.actTitle(before))));
        } else {
            lines.append(line(indent, "do", wording.whatToDo(act)));
            lines.append(line(indent, "as-before", Phrases.say("page.as-before.look", wording.actTitle(before))));
        }
        act.inner().ifPresent(inner -> lines.append(minutes(act, inner, indent)));
        for (Caution caution : act.cautions()) lines.append(line(indent, "caution", caution(act, caution)));
        return lines.toString();
    }

    /** The minutes of an attended block; said once for loads that go through the same. */
    private String minutes(Act act, InnerSchedule inner, String indent) {
        Act before = timed.putIfAbsent(inner, act);
        if (before != null) {
            String again = Phrases.say("page.inner.again", wording.actTitle(before), moments.clock(act.startsAt()));
            return line(indent, "inner", again);
        }
        StringBuilder lines = new StringBuilder(line(indent, "inner", wording.innerHead(inner)));
        String under = indent + " ".repeat(labelWidth);
        for (String row : wording.innerRows(act)) {
            int gap = row.indexOf("  ") + 2;
            String minute = row.substring(0, gap);
            lines.append(Paragraph.of(under + minute + " ".repeat(Math.max(0, 6 - gap)), row.substring(gap)));
        }
        return lines.toString();
    }

    private String caution(Act act, Caution caution) {
        Act before = warned.putIfAbsent(caution, act);
        return before == null
                ? wording.namedCaution(caution)
                : Phrases.say("page.caution.again", wording.cautionName(caution), wording.actTitle(before));
    }

    private String line(String indent, String key, String text) {
        String label = Phrases.say("page." + key);
        return Paragraph.of(indent + label + " ".repeat(labelWidth - label.length()), text);
    }
}
