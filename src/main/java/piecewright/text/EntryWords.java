package piecewright.text;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import piecewright.journal.AcrospireCount;
import piecewright.journal.Entry;
import piecewright.journal.Report;
import piecewright.plan.ActKind;

/** Reads an entry back in words, so that who typed it sees what was understood. */
public final class EntryWords {
    private final QuantityFormat quantities;
    private final MomentFormat moments;

    public EntryWords(DisplayUnits units, ZoneId zone) {
        this.quantities = new QuantityFormat(units);
        this.moments = new MomentFormat(zone, units.locale());
    }

    /** "7. Sat 16 Jan 21:40: the grain weighs 5.560 kg". */
    public String sentence(Entry entry) {
        return Phrases.say("entry.numbered", Integer.toString(entry.number()), dated(entry));
    }

    /** The same without its number. */
    public String dated(Entry entry) {
        boolean changes = moments.clockChange(entry.at().atZone(moments.zone()).toLocalDate())
                .isPresent();
        String moment = changes ? moments.momentWithOffset(entry.at()) : moments.moment(entry.at());
        return Phrases.say("entry.line", moment, said(entry.report()));
    }

    /** What it says. */
    public String said(Report report) {
        if (report instanceof Report.Started started) return Phrases.say("entry.started", name(started.act()));
        if (report instanceof Report.Did did) return done(did);
        if (report instanceof Report.Measured measured) return measured(measured);
        if (report instanceof Report.Observed observed) return observed(observed);
        if (report instanceof Report.HeatSet heat) {
            return Phrases.say("entry.heat", quantities.temperature(heat.airOnC()));
        }
        if (report instanceof Report.VentsSet vents) {
            return Phrases.say("entry.vents", quantities.percent(vents.openFraction()));
        }
        if (report instanceof Report.VesselWeighed vessel) {
            Report.Tare tare = vessel.tare();
            return Phrases.say("entry.vessel", tare.vessel(), quantities.mass(tare.tareKg()));
        }
        if (report instanceof Report.Noted noted) return Phrases.say("entry.note", noted.words());
        if (report instanceof Report.Remarked remarked) return Phrases.say("entry.remarked", remarked.words());
        Report.Corrected corrected = (Report.Corrected) report;
        String number = Integer.toString(corrected.entry());
        return corrected
                .instead()
                .map(instead -> Phrases.say("entry.corrected", number, said(instead)))
                .orElseGet(() -> Phrases.say("entry.void", number));
    }

    private static String name(ActKind kind) {
        return Phrases.say("act." + kind.key() + ".title");
    }

    private String done(Report.Did did) {
        return did.waterL().isPresent()
                ? Phrases.say(
                        "entry.did-water",
                        name(did.act()),
                        quantities.volume(did.waterL().getAsDouble()))
                : Phrases.say("entry.did", name(did.act()));
    }

    private String measured(Report.Measured measured) {
        if (measured instanceof Report.Weighed weighed) return weighed(weighed);
        if (measured instanceof Report.SampleDried sample) {
            return Phrases.say("entry.sample", quantities.moisture(sample.moisture()));
        }
        if (measured instanceof Report.TemperatureRead read) {
            String spot = Phrases.say("spot." + read.spot().key());
            return Phrases.say("entry.temperature", quantities.temperature(read.readC()), spot);
        }
        if (measured instanceof Report.AcrospiresCounted counted) return counted(counted.count());
        if (measured instanceof Report.ChittedCounted chitted) {
            return Phrases.say(
                    "entry.chitted",
                    Integer.toString(chitted.chitted()),
                    Integer.toString(chitted.of()),
                    quantities.percent(chitted.chittedFraction()));
        }
        return Phrases.say("entry.colour", quantities.colour(((Report.ColourMeasured) measured).colourEbc()));
    }

    private String weighed(Report.Weighed weighed) {
        String net = quantities.mass(weighed.netKg());
        return weighed.tare()
                .map(tare -> Phrases.say(
                        "entry.weighed-in",
                        quantities.mass(weighed.grossKg()),
                        tare.vessel(),
                        quantities.mass(tare.tareKg()),
                        net))
                .orElseGet(() -> Phrases.say("entry.weighed", net));
    }

    private String counted(AcrospireCount count) {
        List<String> classes = new ArrayList<>();
        for (int row = 0; row < AcrospireCount.CLASSES; row++) {
            int corns = count.corns().get(row);
            if (corns > 0) classes.add(Phrases.say("entry.class." + row, Integer.toString(corns)));
        }
        return Phrases.say(
                "entry.acrospires",
                Integer.toString(count.of()),
                String.join(", ", classes),
                quantities.percent(count.meanFraction()));
    }

    private static String observed(Report.Observed observed) {
        String sign = Phrases.say("sign." + observed.sign().key());
        return Phrases.say("entry.observed", observed.words().isBlank() ? sign : observed.words());
    }
}
