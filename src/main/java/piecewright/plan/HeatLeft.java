package piecewright.plan;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import piecewright.house.Heater;

/** Which heat may be left on with nobody near. */
public final class HeatLeft {
    private HeatLeft() {}

    /** The heater a piece lies in: the curer once its cure was begun. */
    static Heater heater(Setup setup, boolean cured) {
        Outfit.Drying drying = setup.outfit().drying();
        return cured ? drying.curer() : drying.dryer();
    }

    /** How hot a kiln may be left on while nobody is near, °C; empty where its heat must be off. */
    public static OptionalDouble leftOnC(Setup setup, boolean cured) {
        OptionalInt rung = hottestRung(setup, heater(setup, cured));
        return rung.isPresent() ? OptionalDouble.of(setup.dryingC(rung.getAsInt())) : OptionalDouble.empty();
    }

    /** The hottest rung that this heater may be left at; empty when it must be switched off. */
    static OptionalInt hottestRung(Setup setup, Heater heater) {
        return IntStream.range(0, setup.style().kiln().ladder().size())
                .filter(rung -> !Rules.needsSomebody(heater.control(), setup.dryingC(rung)))
                .max();
    }
}
