package org.nextpull.live;

import java.nio.file.Path;
import java.util.Optional;
import org.nextpull.finding.Finding;
import org.nextpull.intake.wire.ArrivalTime;

/**
 * How the capture is doing.
 *
 * @param folder where it is written
 * @param bytes bytes that arrived in this session
 * @param failing why it is not written at the moment; empty while all is well
 * @param since since when it is as it is
 */
public record CaptureState(Path folder, long bytes, Optional<Finding> failing, ArrivalTime since) {}
