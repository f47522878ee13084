package piecewright.calendar;

import java.util.UUID;

/** An event of ours as found in a file written earlier. */
public record WrittenEvent(UUID uid, String key, Stamp stamp, EventStatus status, Span span, String summary) {}
