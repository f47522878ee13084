package piecewright.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import piecewright.ensemble.Sureness;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Plan;
import piecewright.style.MaltStyle;
import piecewright.text.Columns.Column;
import piecewright.text.Columns.Side;

/** The steps of a plan as a table of one line each; where there is no room for all, those of a day that repeat share one. */
final class StepRows {
    private static final String MARGIN = "  ";
    /** Steps that repeat and ask the same each time. */
    private static final Set<ActKind> REPEATED = EnumSet.of(ActKind.TURN, ActKind.LOOK, ActKind.CHECK, ActKind.STIR);

    private final Plan plan;
    private final Sureness sureness;
    private final Wording wording;
    private final QuantityFormat quantities;
    private final MomentFormat moments;
    private final Decides decides;

    StepRows(MaltStyle style, Plan plan, Sureness sureness, DisplayUnits units) {
        this.plan = plan;
        this.sureness = sureness;
        this.wording = new Wording(units, plan.subject().zone());
        this.quantities = new QuantityFormat(units);
        this.moments = new MomentFormat(plan.subject().zone(), units.locale());
        this.decides = new Decides(style, plan, units);
    }

    /** The heading, the column titles and the rows, in at most so many lines if sharing can bring that about. */
    String within(int lines) {
        List<List<Act>> each = plan.acts().stream().map(List::of).toList();
        boolean fits = each.size() + 3 <= lines;
        return table(fits ? each : shared());
    }

    private List<List<Act>> shared() {
        List<List<Act>> rows = new ArrayList<>();
        for (Act act : plan.acts()) {
            List<Act> last = rows.isEmpty() ? List.of() : rows.get(rows.size() - 1);
            boolean joins = !last.isEmpty()
                    && REPEATED.contains(act.kind())
                    && last.get(0).kind() == act.kind()
                    && day(last.get(0)).equals(day(act));
            if (joins) last.add(act);
            else rows.add(new ArrayList<>(List.of(act)));
        }
        return rows;
    }

    private LocalDate day(Act act) {
        return LocalDate.ofInstant(act.startsAt(), moments.zone());
    }

    private String table(List<List<Act>> rows) {
        Columns table = new Columns(List.of(
                ActPages.column("start", Side.LEFT),
                ActPages.column("minutes", Side.RIGHT),
                new Column(Phrases.say("onepage.column.step"), Side.LEFT),
                ActPages.column("weight", Side.RIGHT),
                new Column(Phrases.say("onepage.column.likely"), Side.LEFT),
                new Column(Phrases.say("onepage.column.sets"), Side.LEFT)));
        rows.forEach(row -> add(table, row));
        StringBuilder page = new StringBuilder("\n" + Phrases.say("onepage.steps") + "\n");
        page.append(MARGIN).append(table.titles()).append('\n');
        for (int i = 0; i < table.size(); i++)
            page.append(MARGIN).append(table.row(i)).append('\n');
        return page.toString();
    }

    private void add(Columns table, List<Act> row) {
        Act first = row.get(0);
        Act last = row.get(row.size() - 1);
        table.add(
                moments.moment(first.startsAt()),
                Long.toString(first.work().toMinutes()),
                row.size() == 1 ? wording.actTitle(first) : wording.actTitle(first) + "–" + ActNames.number(last.id()),
                quantities.scaleMass(first.expect().massKg()),
                likely(first),
                row.size() == 1 ? decides.of(first) : times(row));
    }

    private String times(List<Act> row) {
        List<String> more =
                row.stream().skip(1).map(act -> moments.clock(act.startsAt())).toList();
        return Phrases.say("onepage.again", String.join(", ", more));
    }

    private String likely(Act act) {
        return Optional.of(act.id())
                .flatMap(sureness::act)
                .map(bands -> likely(bands.weighedKg().p10(), bands.weighedKg().p90()))
                .orElse("–");
    }

    /** As rough as still tells the two apart. */
    private String likely(double lowKg, double highKg) {
        String low = quantities.roughMass(lowKg);
        String high = quantities.roughMass(highKg);
        return low.equals(high) ? range(quantities.scaleMass(lowKg), quantities.scaleMass(highKg)) : range(low, high);
    }

    /** Two weights that say once what they share: "6.1–6.8 kg", "5 lb 13–15.2 oz". */
    private static String range(String low, String high) {
        int pounds = low.indexOf(' ', low.indexOf(' ') + 1) + 1;
        boolean led = pounds > 0 && high.startsWith(low.substring(0, pounds));
        return led ? low.substring(0, pounds) + ended(low.substring(pounds), high.substring(pounds)) : ended(low, high);
    }

    private static String ended(String low, String high) {
        int unit = low.lastIndexOf(' ');
        boolean share = unit > 0 && low.indexOf(' ') == unit && high.endsWith(low.substring(unit));
        return Phrases.say("onepage.likely", share ? low.substring(0, unit) : low, high);
    }
}
