package piecewright.calendar;

import java.io.IOException;

/** Prints one file of the fixture plan; started in JVMs of other zones and locales. */
public final class FilePrinter {
    private FilePrinter() {}

    public static void main(String[] arguments) throws IOException {
        System.out.write(file());
        System.out.flush();
    }

    static byte[] file() {
        Revision first =
                Ledger.startedFor(PlanFixture.BATCH).next(PlanFixture.usual().events(), PlanFixture.NOW);
        Revision second =
                first.ledger().next(PlanFixture.usual().withTurns(5).events(), PlanFixture.NOW.plusSeconds(60));
        return new IcsWriter().file("Malt plan – İIıi lot 7", second.forImportFile());
    }
}
