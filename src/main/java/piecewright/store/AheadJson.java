package piecewright.store;

import piecewright.text.ActsAhead;
import piecewright.text.ActsAhead.Ahead;
import tools.jackson.databind.node.ObjectNode;

/** Writes what is to do in several batches as a JSON document, format 1. */
public final class AheadJson {
    private AheadJson() {}

    public static String write(ActsAhead ahead) {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        root.put("timeZone", ahead.zone().getId());
        var acts = root.putArray("acts");
        for (Ahead act : ahead.acts()) {
            ObjectNode node = acts.addObject();
            node.put("batch", act.batch());
            node.put("id", act.id());
            node.put("title", act.title());
            node.put("startsAt", PlanJson.moment(act.startsAt(), ahead.zone()));
            node.put("minutes", act.work().toMinutes());
            if (ahead.isOverdue(act)) node.put("overdue", true);
            act.staysUntil().ifPresent(until -> node.put("stayUntil", PlanJson.moment(until, ahead.zone())));
        }
        ahead.next().ifPresent(one -> {
            ObjectNode node = root.putObject("next").put("batch", one.batch()).put("id", one.id());
            node.put("startsAt", PlanJson.moment(one.startsAt(), ahead.zone()));
        });
        if (!ahead.unread().isEmpty()) {
            var unread = root.putArray("unread");
            ahead.unread().forEach(unread::add);
        }
        return JsonText.write(root);
    }
}
