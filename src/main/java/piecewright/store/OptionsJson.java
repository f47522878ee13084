package piecewright.store;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.calendar.ExportOptions;
import piecewright.calendar.ExportOptions.PassivePhases;
import piecewright.calendar.QuietHours;
import tools.jackson.databind.node.ObjectNode;

/** What a person chose about their calendar, as the keys "phases", "alarms" and "quiet" of a block. */
final class OptionsJson {
    private OptionsJson() {}

    static void put(ObjectNode block, ExportOptions options) {
        block.put("phases", options.phases() == PassivePhases.SHOWN);
        var alarms = block.putArray("alarms");
        options.alarms().forEach(alarm -> alarms.addObject().put("minutes", alarm.toMinutes()));
        options.quietHours().ifPresent(quiet -> {
            ObjectNode node = block.putObject("quiet");
            node.put("from", quiet.from().toString());
            node.put("until", quiet.until().toString());
        });
    }

    static ExportOptions read(JsonBlock block) throws StoreException {
        List<Duration> alarms = new ArrayList<>();
        for (JsonBlock alarm : block.blocks("alarms")) {
            alarms.add(Duration.ofMinutes(alarm.onlyKeys("minutes").whole("minutes", 0, 24 * 60 - 1)));
        }
        PassivePhases phases = block.trueOrFalse("phases") ? PassivePhases.SHOWN : PassivePhases.LEFT_OUT;
        Optional<JsonBlock> hours = block.optionalBlock("quiet");
        Optional<QuietHours> quiet = hours.isPresent() ? Optional.of(quiet(hours.get())) : Optional.empty();
        return block.make(() -> new ExportOptions(phases, alarms, quiet));
    }

    private static QuietHours quiet(JsonBlock block) throws StoreException {
        block.onlyKeys("from", "until");
        var from = LocalTimes.time(block, "from");
        var until = LocalTimes.time(block, "until");
        return block.make(() -> new QuietHours(from, until));
    }
}
