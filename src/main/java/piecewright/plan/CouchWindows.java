package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import piecewright.plan.Simulation.Station;
import piecewright.process.couch.CouchCurve;
import piecewright.process.couch.HotCouch;
import piecewright.style.HotCouchSchedule;

/** What the heating curve of a packed couch says about when to look and when to unpack. */
final class CouchWindows {
    private final Couching couching;

    CouchWindows(Couching couching) {
        this.couching = couching;
    }

    /**
     * When the next look is due: free of harm to where the search counts it as soft while the pile is cool, for it checks
     * its own heat; once it may be hot, as the search wants it.
     */
    Slip checkSlip(double packedHours) {
        CouchRules rules = new CouchRules(couching.schedule());
        Slip paid = rules.checkSlip(packedHours);
        double latest = packedHours > rules.mayBeHotHours() ? paid.latestHours() : paid.softHours();
        return new Slip(0, 0, latest, paid.softHours(), paid.hardHours());
    }

    /** The curve of a couch from its packing to the last hour its style lets it stay. */
    CouchCurve curve(Station packed) {
        double fromHours = hours(packed.visit().at());
        double untilHours = fromHours + couching.schedule().longestHours();
        HotCouch couch = new HotCouch(couching.model(), couching.air());
        return CouchCurve.of(couch, packed.after(), fromHours, untilHours);
    }

    /** The moment of an hour of the curve. */
    Instant instant(double atHours) {
        return couching.air().origin().plusSeconds(Math.round(atHours * 60) * 60);
    }

    /** The hour of the curve at a moment. */
    double hours(Instant at) {
        return Duration.between(couching.air().origin(), at).toMillis() / 3_600_000.0;
    }

    /** When the couch broken at this place in the list may be: by its index, and never past its hours. */
    Window broken(List<Station> stations, int index) {
        Instant at = stations.get(index).visit().at();
        return stations.subList(0, index).stream()
                .filter(station -> station.visit().kind() == ActKind.PACK)
                .findFirst()
                .map(packed -> broken(packed, at))
                .orElseGet(() -> new Window(at, at, at));
    }

    private Window broken(Station packed, Instant at) {
        CouchCurve curve = curve(packed);
        HotCouchSchedule schedule = couching.schedule();
        Instant last = packed.visit().at().plusSeconds(Math.round(schedule.longestHours() * 3600));
        double middle = (schedule.indexHours() + schedule.acceptableIndex().highHours()) / 2;
        return Windows.enclosing(
                moment(curve.reachesIndexHours(schedule.acceptableIndex().lowHours()), last),
                moment(curve.reachesIndexHours(middle), last),
                moment(curve.reachesIndexHours(schedule.acceptableIndex().highHours()), last),
                at);
    }

    private Instant moment(OptionalDouble atHours, Instant otherwise) {
        return atHours.isPresent() ? instant(atHours.getAsDouble()) : otherwise;
    }
}
