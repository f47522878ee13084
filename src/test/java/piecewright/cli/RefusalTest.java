package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.plan.ModelParameters;
import piecewright.plan.Planner;

/** Whatever is wrong with what was given: one line, exit code 2, nothing planned, nothing written. */
class RefusalTest {
    private static final Path LOTS = Path.of("demo-data", "lots");
    private static final Path HOUSES = Path.of("demo-data", "houses");

    @TempDir
    private Path folder;

    private Path lot;
    private Path house;

    @BeforeEach
    void copyTheFilesToBreak() throws IOException {
        lot = Files.copy(LOTS.resolve("two-row-barley.json"), folder.resolve("lot.json"));
        house = Files.copy(HOUSES.resolve("cool-garage.json"), folder.resolve("house.json"));
        Files.copy(HOUSES.resolve("cool-garage-2027-03.csv"), folder.resolve("cool-garage-2027-03.csv"));
    }

    private List<String> right() {
        return new ArrayList<>(List.of(
                "plan",
                "--style",
                "pale",
                "--lot",
                lot.toString(),
                "--house",
                house.toString(),
                "--malt",
                "4 kg",
                "--ready-by",
                "2027-05-01"));
    }

    /** The right options with one of them replaced, or taken away when the value is "-". */
    private List<String> with(String option, String value) {
        List<String> arguments = right();
        int at = arguments.indexOf(option);
        if (at < 0) {
            arguments.add(option);
            arguments.add(value);
        } else if (value.equals("-")) {
            arguments.subList(at, at + 2).clear();
        } else {
            arguments.set(at + 1, value);
        }
        return arguments;
    }

    private String refusal(List<String> wrong) {
        List<String> arguments = new ArrayList<>(wrong);
        arguments.addAll(List.of("--calendar", folder.resolve("plan.ics").toString()));
        arguments.addAll(List.of("--into", folder.resolve("batch.json").toString()));
        List<String> before = names();
        Run run = Run.of(Run.NEVER, Run.NOW, arguments);
        assertEquals(2, run.code(), run.err());
        assertEquals("", run.out());
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(run.err().startsWith("piecewright: ") && run.err().endsWith("\n"), run.err());
        assertEquals(before, names(), "nothing was written");
        return run.err().substring("piecewright: ".length()).strip();
    }

    private List<String> names() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(Path::toString).sorted().toList();
        } catch (IOException failed) {
            throw new AssertionError(failed);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\'', textBlock = """
            --style       | -           | --style: is missing; give a style such as pale
            --style       | pail        | --style: schedules: no style "pail"; did you mean "pale"?
            --lot         | -           | --lot: is missing; give the file of a lot of grain
            --house       | -           | --house: is missing; give the file of a household
            --malt        | -           | --malt: is missing; give a weight such as "4 kg", or --grain
            --malt        | 0 kg        | --malt: "0 kg" must be more than nothing and at most 1000 kg
            --malt        | 1001 kg     | --malt: "1001 kg" must be more than nothing and at most 1000 kg
            --grain       | 5 kg        | --grain: stands beside --malt; give one of the two
            --ready-by    | -           | --ready-by: is missing; give a day such as 2027-05-01, or --start
            --ready-by    | 1 May       | --ready-by: "1 May" is not a day; write it like 2027-05-01
            --ready-by    | 2027-02-30  | --ready-by: "2027-02-30" is not a day; write it like 2027-05-01
            --ready-by    | 2027-02-14  | --ready-by: 2027-02-14 lies before today, 2027-02-15; give a later day, or say --today
            --ready-by    | 9999-01-01  | --ready-by: 9999-01-01 is too far away; the years are 2000 to 2199
            --start       | 2027-04-01  | --start: stands beside --ready-by; give one of the two
            --today       | tomorrow    | --today: "tomorrow" is not a day; write it like 2027-05-01
            --today       | 2027-05-02  | --ready-by: 2027-05-01 lies before today, 2027-05-02; give a later day, or say --today
            --units       | imperial    | --units: must be metric or us, not "imperial"
            --colour-unit | RGB         | --colour-unit: must be EBC, SRM or Lovibond, not "RGB"
            --locale      | de_DE!      | --locale: "de_DE!" is no tag; write it like en-GB
            --locale      | xx          | --locale: "xx" names no language; write it like en-GB
            --schedules   | nowhere     | nowhere: there is no such folder; make it or name another
            --hous        | x           | --hous: there is no such option; did you mean --house?
            """)
    void aWrongOptionIsNamedWithItsMend(String option, String value, String said) {
        assertEquals(said, refusal(with(option, value)));
    }

    @Test
    void anEmptyStyleIsAnsweredWithThoseThereAre() {
        String said = refusal(with("--style", ""));
        assertTrue(said.startsWith("--style: schedules: no style \"\"; known here: "), said);
        assertTrue(said.contains("pale, pale-ale"), said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"four", "-4 kg", "4 litres", "NaN", "1e309 kg", "4 kg 4 kg", "", "∞ kg", "4 kg; rm"})
    void anUnreadableWeightIsQuotedWithAnExample(String typed) {
        String said = refusal(with("--malt", typed));
        assertTrue(said.startsWith("--malt: ") && said.contains("write it like"), said);
    }

    @Test
    void optionsGivenTwiceWithoutValueOrAloneAreRefused() {
        assertEquals("--style: stands there twice; keep one", refusal(append("--style", "pale")));
        Run valueless = Run.of(Run.NEVER, "plan", "--style");
        assertEquals(2, valueless.code());
        assertEquals(
                "piecewright: --style: its value is missing; write it behind the option, in quotes if it has blanks\n",
                valueless.err());
        assertEquals(
                "kg: this word belongs to no option; quote values; see piecewright plan --help", refusal(append("kg")));
        Run unknown = Run.of(Run.NEVER, "mill");
        assertEquals(2, unknown.code());
        assertEquals("piecewright: mill: there is no such command; see piecewright --help\n", unknown.err());
    }

    private List<String> append(String... more) {
        List<String> arguments = right();
        arguments.addAll(List.of(more));
        return arguments;
    }

    @Test
    void oneFileIsNotReadAndWritten() {
        List<String> arguments = append("--calendar", lot.toString());
        Run run = Run.of(Run.NEVER, Run.NOW, arguments);
        assertEquals(2, run.code());
        assertEquals("piecewright: --calendar: " + lot + " is the file of --lot; name another\n", run.err());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\'', textBlock = """
            lot   | "floatersPercent": 2            | "floatersPercnt": 2              | key "floatersPercnt"
            lot   | "format": 1                     | "format": 2                      | key "format"
            lot   | "grain": "barley"               | "grain": "barly"                 | did you mean "barley"?
            lot   | "thousandCornG": 44             | "thousandCornG": "44 kg"         | key "thousandCornG"
            lot   | "thousandCornG": 44             | "thousandCornG": "44 °C"         | key "thousandCornG"
            lot   | "wetBasisPercent": 12.0         | "wetBasisPercent": 112.0         | key "moisture.wetBasisPercent"
            lot   | "wetBasisPercent": 12.0         | "wetBasisPercent": 1e999999999   | "moisture.wetBasisPercent"
            lot   | "treated": "no"                 | "treated": null                  | key "treated"
            lot   | "by72Hours": 98                 | "by72Hours": 101                 | key "dishes[0]
            lot   | "name": "two-row barley",       | ''                               | key "name"
            house | "timeZone": "Europe/Oslo"       | "timeZone": "Europe/Olso"        | key "timeZone"
            house | "steepWaterC": 9                | "steepWaterC": "9 kg"            | key "steepWaterC"
            house | "06:00-07:00", "17:30-22:00"    | "06:00-07:00", "22:00-17:30"     | key "people[0]
            house | cool-garage-2027-03.csv         | missing.csv                      | missing.csv
            house | "volumeL": 30                   | "volumeL": -30                   | key "kit.vessels[0].volumeL"
            house | "holdsC": [30, 95]              | "holdsC": [95, 30]               | key "kit.heaters[0]
            house | "place": "hall"                 | "place": "hell"                  | key "kit.
            """)
    void aWrongFileIsNamedWithKeyOrLine(String which, String right, String wrong, String named) throws IOException {
        Path file = which.equals("lot") ? lot : house;
        String text = Files.readString(file);
        assertTrue(text.contains(right), right);
        Files.writeString(file, text.replaceFirst(java.util.regex.Pattern.quote(right), wrong));
        String said = refusal(right());
        assertTrue(said.startsWith(folder.toString()) && said.contains(named), said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"--lot", "--house"})
    void damagedFilesAreRefused(String option) throws IOException {
        Path file = option.equals("--lot") ? lot : house;
        byte[] whole = Files.readAllBytes(file);
        String text = new String(whole, StandardCharsets.UTF_8);
        for (String damaged : List.of(
                text.substring(0, text.length() / 2),
                "",
                "[]",
                text + "}",
                "{\"format\":1,\"a\":" + "[".repeat(100_000),
                "{\"format\":1,\"a\":" + "9".repeat(100_000) + "}")) {
            Files.writeString(file, damaged);
            assertTrue(refusal(right()).startsWith(file + ": "), damaged.substring(0, Math.min(40, damaged.length())));
        }
        Files.write(file, new byte[] {'{', (byte) 0xff, '}'});
        assertEquals(file + ": line 1: this is not UTF-8 text; save the file as UTF-8", refusal(right()));
        Files.delete(file);
        assertEquals(file + ": there is no such file; check the name and the folder", refusal(right()));
        Files.createDirectory(file);
        assertEquals(file + ": this is a folder; name a file in it", refusal(right()));
        Files.delete(file);
        try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
            huge.setLength(100L << 20);
        }
        assertTrue(refusal(right()).contains("larger than 1 MB"));
    }

    @Test
    void aBrokenStyleOfOnesOwnIsRefusedByFile() throws IOException {
        Path own = Files.createDirectory(folder.resolve("own"));
        Files.writeString(own.resolve("smoky.json"), "{\"format\": 1, \"style\": \"smoky\", \"tilte\": \"x\"}");
        assertTrue(refusal(with("--schedules", own.toString())).startsWith(own.resolve("smoky.json") + ": key "));
    }

    @Test
    void noStyleIsAnsweredWithTheListOfThem() {
        String said = refusal(with("--style", ""));
        assertTrue(said.startsWith("--style: schedules: no style \"\"; known here: "), said);
        assertTrue(said.contains("pale, pale-ale, ") && said.endsWith("wheat-pale"), said);
    }

    @Test
    void aStyleOfOnesOwnIsListedAndTakesTheOldOnesPlace() throws IOException {
        Path own = Files.createDirectory(folder.resolve("own"));
        String pale = Files.readString(Path.of("schedules", "pale.json"));
        Files.writeString(own.resolve("mine.json"), pale.replace("\"style\": \"pale\"", "\"style\": \"mine\""));
        Files.writeString(own.resolve("pale.json"), pale.replace("Pale malt", "Paler malt"));
        Run run = Run.of(Run.NEVER, "styles", "--schedules", own.toString());
        List<String> lines = run.out().lines().toList();
        assertEquals(lines.stream().sorted().toList(), lines);
        String list = run.out().replaceAll(" +", " ");
        assertTrue(list.contains("mine Pale malt, from barley, 2.5 EBC to 3.5 EBC\n"), list);
        assertTrue(list.contains("pale Paler malt, from barley, 2.5 EBC to 3.5 EBC\n"), list);
        assertTrue(list.contains("wheat-pale Pale wheat malt, from wheat, 2 EBC to 4 EBC\n"), list);
        assertTrue(lines.stream().noneMatch(line -> line.contains(" Pale malt, ") && line.startsWith("pale ")), list);
        assertEquals(0, run.code());
    }

    @Test
    void withoutArgumentsThereIsHelp() {
        Run run = Run.of(Run.NEVER);
        assertEquals(0, run.code());
        assertTrue(run.out().contains("plan ") && run.out().contains("styles "), run.out());
        assertEquals("", run.err());
        assertEquals(0, Run.of(Run.NEVER, "plan", "--help").code());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            treated-seed           | Lot “pink seed barley” is treated seed, and treated seed is poison
            low-germination-barley | Only 72 % of lot “barley from the back of the shed” grew
            """)
    void aLotThatMustNotBeMaltedIsNotPossible(String name, String said) throws IOException {
        List<String> wish = Run.plan("pale", name, "cool-garage", "--malt", "4 kg", "--ready-by", "2027-05-01");
        wish.addAll(List.of("--calendar", folder.resolve("plan.ics").toString()));
        List<String> before = names();
        Run run = Run.of(new Planner(ModelParameters.defaults())::plan, Run.NOW, wish);
        assertEquals(1, run.code());
        assertTrue(run.out().startsWith(said), run.out());
        assertEquals("", run.err());
        assertEquals(before, names());
        wish.add("--json");
        Run json = Run.of(new Planner(ModelParameters.defaults())::plan, Run.NOW, wish);
        assertEquals(1, json.code());
        assertTrue(json.out().contains("\"format\" : 1") && json.out().contains(said), json.out());
    }
}
