package org.nextpull.intake.folder;

import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalQueue;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.Fingerprint;

/**
 * Looks at a folder when it is told to, and puts what it finds into a queue: the bytes of a file as they come while it grows, all of
 * them at the latest once it stays as it is, and then that it is complete. Each content is taken once, whatever its file is called: a
 * file that was renamed or copied is known by its fingerprint. A file that got more lines is gone on with where it ended; one that holds
 * something else is sent from its beginning. Logs that were there before the session began are passed over, which is said, and kept in the
 * capture as files that begin at their end. Has no thread and no clock of its own.
 */
public final class FolderWatch {
    private static final int MOST_NAMES = 5;

    private final FolderSettings settings;
    private final FolderMemory memory;
    private final ArrivalQueue queue;
    private final String source;
    private final Map<String, WatchedFile> files = new LinkedHashMap<>();
    private final Map<Fingerprint, String> taken = new HashMap<>();
    private final Set<String> strangers = new HashSet<>();
    private final byte[] buffer = new byte[Chunk.MOST_BYTES];
    private boolean first = true;
    private boolean unreadable;

    /**
     * Prepares to watch.
     *
     * @param memory what this session did before the program was started again
     */
    public FolderWatch(FolderSettings settings, ArrivalQueue queue, FolderMemory memory) {
        this.settings = settings;
        this.queue = queue;
        this.source = settings.folder().toString();
        this.memory = memory;
        memory.taken().forEach(complete -> taken.put(complete.print(), complete.file()));
    }

    /** Name of the source of what it puts. */
    public String source() {
        return source;
    }

    /**
     * Looks once.
     *
     * @param nowNs time on any clock that does not go back
     */
    public void look(long nowNs) throws InterruptedException {
        Map<String, WatchedFile.Stamp> found;
        try {
            found = WatchedFile.Stamp.inFolder(
                    settings.folder(), name -> FolderSettings.isLog(name) || FolderSettings.isStranger(name));
            sayStrangers(
                    found.keySet().stream().filter(FolderSettings::isStranger).toList());
            found.keySet().removeIf(FolderSettings::isStranger);
        } catch (IOException e) {
            if (!unreadable) {
                say(Finding.error(FindingCode.FOLDER_NOT_READABLE, Place.inFile(source), Detail.of("why", why(e))));
            }
            unreadable = true;
            return;
        }
        if (unreadable) {
            unreadable = false;
            say(Finding.note(FindingCode.FOLDER_READABLE_AGAIN, Place.inFile(source)));
        }
        followRenames(found);
        for (Map.Entry<String, WatchedFile.Stamp> entry : found.entrySet()) {
            look(entry.getKey(), entry.getValue(), nowNs);
        }
        if (first && !memory.isResumed() && !found.isEmpty()) {
            sayPassedOver(found.keySet());
        }
        first = false;
    }

    /** A file that appears and cannot be a log is said once; those that were there before the session are no news. */
    private void sayStrangers(List<String> names) {
        for (String name : names) {
            if (strangers.add(name) && !first) {
                say(Finding.warning(
                        FindingCode.FOLDER_FILE_NO_LOG,
                        Place.inFile(settings.folder().resolve(name).toString())));
            }
        }
    }

    private void sayPassedOver(Set<String> names) {
        String some = names.stream().limit(MOST_NAMES).collect(Collectors.joining(", "));
        say(Finding.note(
                FindingCode.FOLDER_LOGS_BEFORE,
                Place.inFile(source),
                Detail.of("count", names.size()),
                Detail.of("files", names.size() > MOST_NAMES ? some + ", ..." : some)));
    }

    private void followRenames(Map<String, WatchedFile.Stamp> found) {
        List<WatchedFile> gone = new ArrayList<>();
        files.values().stream().filter(file -> !found.containsKey(file.name())).forEach(gone::add);
        gone.forEach(file -> files.remove(file.name()));
        for (Map.Entry<String, WatchedFile.Stamp> entry : found.entrySet()) {
            if (!files.containsKey(entry.getKey()) && entry.getValue().key().isPresent()) {
                gone.stream()
                        .filter(file ->
                                file.stamp().key().equals(entry.getValue().key()))
                        .findFirst()
                        .ifPresent(file -> {
                            file.rename(entry.getKey());
                            files.put(file.name(), file);
                        });
            }
        }
    }

    private void look(String name, WatchedFile.Stamp stamp, long nowNs) throws InterruptedException {
        WatchedFile file = files.get(name);
        if (file == null) {
            file = new WatchedFile(name, stamp, nowNs);
            files.put(name, file);
            if (first) {
                passOver(file);
            }
            return;
        }
        try {
            lookInto(file, stamp, nowNs);
            file.held(false);
        } catch (NoSuchFileException e) {
            // gone since the folder was listed: the next look sees it
            return;
        } catch (IOException e) {
            if (file.held(true)) {
                say(Finding.warning(FindingCode.FOLDER_FILE_HELD, place(file), Detail.of("why", why(e))));
            }
        }
    }

    /** What was there before the session began is no part of it; it counts from where it then ended. */
    private void passOver(WatchedFile file) {
        OptionalLong before = memory.isResumed()
                ? memory.passedOver(file.name())
                : OptionalLong.of(file.stamp().size());
        before.ifPresent(file::passedOver);
        if (before.isPresent() && !memory.isResumed()) {
            queue.fromFile(source, file.name(), file.sent());
        }
    }

    private void lookInto(WatchedFile file, WatchedFile.Stamp stamp, long nowNs)
            throws IOException, InterruptedException {
        boolean seen = file.see(stamp, nowNs);
        boolean whileAway = file.isDone() && stamp.size() != file.sent();
        if (seen || whileAway) {
            changed(file);
        }
        if (file.isFollowed()) {
            send(file);
        }
        if (!file.isDone() && stamp.size() > 0 && file.isSteady(nowNs, settings.steadyMs(), true)) {
            WatchedFile.End end = WatchedFile.End.of(path(file), stamp.size());
            if (!end.isRoom() && file.isSteady(nowNs, settings.steadyMs(), end.isLineEnd())) {
                complete(file);
            }
        }
    }

    private void changed(WatchedFile file) throws IOException {
        long size = file.stamp().size();
        if (size < file.sent()) {
            file.startOver();
        } else if (file.isDone()) {
            MessageDigest before = digest(file, file.sent());
            boolean same = file.taken()
                    .map(print -> print.equals(Fingerprint.of(file.sent(), before)))
                    .orElse(size > file.sent());
            if (!same) {
                file.startOver();
            } else if (size > file.sent()) {
                file.goOn(before);
            }
        }
    }

    private void complete(WatchedFile file) throws IOException, InterruptedException {
        long size = file.stamp().size();
        Fingerprint print = Fingerprint.of(size, digest(file, size));
        String known = taken.get(print);
        if (known != null && file.sent() == 0) {
            file.done(print);
            if (!known.equals(file.name()) && files.containsKey(known)) {
                say(Finding.note(FindingCode.FOLDER_FILE_KNOWN, place(file), Detail.of("other", known)));
            }
            return;
        }
        send(file);
        if (!file.sentPrint().equals(print)) {
            file.startOver();
            return;
        }
        if (file.kind() != Arrival.Taken.NEW) {
            say(Finding.note(
                    file.kind() == Arrival.Taken.EXTENDED
                            ? FindingCode.FOLDER_FILE_EXTENDED
                            : FindingCode.FOLDER_FILE_REWRITTEN,
                    place(file)));
        }
        queue.fileComplete(source, file.name(), file.kind(), print);
        taken.put(print, file.name());
        file.done(print);
    }

    private void send(WatchedFile file) throws IOException, InterruptedException {
        long end = file.stamp().size();
        if (file.sent() >= end) {
            return;
        }
        try (RandomAccessFile in = new RandomAccessFile(path(file).toFile(), "r")) {
            in.seek(file.sent());
            queue.fromFile(source, file.name(), file.sent());
            while (file.sent() < end) {
                int count = in.read(buffer, 0, (int) Math.min(buffer.length, end - file.sent()));
                if (count < 0) {
                    return;
                }
                queue.bytesWhenRoom(source, buffer, count);
                file.sent(buffer, count);
            }
        }
    }

    private MessageDigest digest(WatchedFile file, long length) throws IOException {
        MessageDigest digest = Fingerprint.digest();
        try (InputStream in = Files.newInputStream(path(file))) {
            long left = length;
            int count = in.read(buffer, 0, (int) Math.min(buffer.length, left));
            while (left > 0 && count > 0) {
                digest.update(buffer, 0, count);
                left -= count;
                count = in.read(buffer, 0, (int) Math.min(buffer.length, left));
            }
        }
        return digest;
    }

    private Path path(WatchedFile file) {
        return settings.folder().resolve(file.name());
    }

    private Place place(WatchedFile file) {
        return Place.inFile(path(file).toString());
    }

    private void say(Finding finding) {
        queue.trouble(source, finding);
    }

    private static String why(IOException e) {
        return e.getMessage() == null
                ? e.getClass().getSimpleName()
                : e.getClass().getSimpleName() + ": " + e.getMessage();
    }
}
