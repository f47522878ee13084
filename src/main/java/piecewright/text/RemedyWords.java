package piecewright.text;

import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import piecewright.remedy.Change;
import piecewright.remedy.Remedy;

/** What would help when nothing fits, every change already tried. */
public final class RemedyWords {
    private final QuantityFormat quantities;
    private final MomentFormat moments;

    /** For one person; moments as the house of the remedy tells them. */
    public RemedyWords(DisplayUnits units, ZoneId zone) {
        this.quantities = new QuantityFormat(units);
        this.moments = new MomentFormat(zone, units.locale());
    }

    /** A heading and a line for each; empty when nothing was found. */
    public List<String> lines(List<Remedy> remedies) {
        if (remedies.isEmpty()) return List.of();
        return Stream.concat(
                        Stream.of(Phrases.say("remedy.heading")),
                        remedies.stream().map(remedy -> "- " + sentence(remedy)))
                .toList();
    }

    /** The change and the plan that comes of it. */
    public String sentence(Remedy remedy) {
        return Phrases.say(
                "remedy.gives",
                change(remedy.change()),
                moments.moment(remedy.plan().startsAt()),
                moments.moment(remedy.plan().subject().readyAt()));
    }

    /** The change alone. */
    String change(Change change) {
        if (change instanceof Change.ChilledWater c)
            return Phrases.say("remedy.chilled-water", quantities.temperature(c.fillC()));
        if (change instanceof Change.ColderPlace c) return Phrases.say("remedy.colder-place", c.place());
        if (change instanceof Change.OtherPlace c) return Phrases.say("remedy.other-place", c.place());
        if (change instanceof Change.ShallowerBed c)
            return Phrases.say("remedy.shallower-bed", quantities.length(c.bedCm()));
        if (change instanceof Change.NightActs c)
            return Phrases.say(c.most() == 1 ? "remedy.night-act" : "remedy.night-acts", String.valueOf(c.most()));
        if (change instanceof Change.LongerHours c)
            return Phrases.say("remedy.longer-hours", String.valueOf(c.minutes()));
        if (change instanceof Change.LaterDay c) return Phrases.say("remedy.later-day", moments.day(c.readyBy()));
        if (change instanceof Change.OtherStart c) return Phrases.say("remedy.other-start", moments.day(c.day()));
        if (change instanceof Change.ShorterRest c)
            return Phrases.say("remedy.shorter-rest", String.valueOf(Math.round(c.restDays())));
        if (change instanceof Change.SmallerPiece c)
            return Phrases.say("remedy.smaller-piece", quantities.mass(c.massKg()));
        if (change instanceof Change.MoreTrays c)
            return Phrases.say("remedy.more-trays", String.valueOf(c.count()), c.trays());
        throw new IllegalArgumentException("no words for " + change.getClass().getSimpleName());
    }
}
